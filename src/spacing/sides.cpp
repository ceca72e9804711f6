#include "spacing/sides.h"

#include "spacing/rounding.h"

#include <algorithm>
#include <limits>

namespace wallwright::spacing {

namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr std::size_t kCompared = 6;  // conflicts among which the hardest is looked for

/// Empty when the side cannot be for less than the limit.
std::optional<double> cost_of_side(Layout& layout, Pair pair, Side side, double cost_limit) {
    // Two blocks that part by s cost at least s * s / 2 more: each weighs at least as much as one
    // piece.
    const double s = layout.shortfall(pair, side);
    if (layout.cost() + s * s / 2 >= cost_limit) {
        return std::nullopt;
    }
    const Layout::Mark before = layout.mark();
    if (!layout.part(pair, side, cost_limit)) {
        return std::nullopt;
    }
    const double cost = layout.cost();
    layout.undo(before);
    return cost_without_rounding(cost);
}

/// How dear it is not to get the cheapest side.
double cost_of_second(const Choices& choices) {
    return choices.count > 1 ? choices.sides[1].cost : kInfinity;
}

}  // namespace

Choices try_sides(Layout& layout, Pair pair, double cost_limit) {
    Choices choices{pair, {}, 0};
    for (const Side side : kSides) {
        if (const std::optional<double> cost = cost_of_side(layout, pair, side, cost_limit)) {
            choices.sides[choices.count++] = {side, *cost};
        }
    }
    std::stable_sort(choices.sides.begin(), choices.sides.begin() + choices.count,
                     [](const Trial& a, const Trial& b) { return a.cost < b.cost; });
    return choices;
}

std::optional<Trial> cheapest_side(Layout& layout, Pair pair) {
    std::array<Side, kSides.size()> sides = kSides;
    std::ranges::stable_sort(
        sides, {}, [&](Side side) { return without_rounding(layout.shortfall(pair, side)); });
    std::optional<Trial> best;
    for (const Side side : sides) {
        if (const std::optional<double> cost =
                cost_of_side(layout, pair, side, best ? best->cost : kInfinity)) {
            best = {side, *cost};
        }
    }
    return best;
}

void keep_deepest(std::vector<Conflict>& conflicts, std::size_t count) {
    count = std::min(count, conflicts.size());
    std::partial_sort(conflicts.begin(), conflicts.begin() + static_cast<std::ptrdiff_t>(count),
                      conflicts.end(), [](const Conflict& a, const Conflict& b) {
                          return a.depth != b.depth ? a.depth > b.depth : a.pair < b.pair;
                      });
    conflicts.resize(count);
}

std::optional<std::vector<Parting>> part_hardest_first(Layout& layout, std::uint64_t work) {
    const Layout::Mark before = layout.mark();
    const std::uint64_t work_limit = layout.work() + work;
    std::vector<Parting> partings;
    std::vector<Conflict> conflicts;
    for (layout.find_conflicts(conflicts); !conflicts.empty(); layout.find_conflicts(conflicts)) {
        keep_deepest(conflicts, kCompared);
        Choices hardest;
        for (std::size_t i = 0; i < conflicts.size(); ++i) {
            const Choices choices = try_sides(layout, conflicts[i].pair, kInfinity);
            if (i == 0 || cost_of_second(choices) > cost_of_second(hardest)) {
                hardest = choices;
            }
        }
        if (hardest.count == 0 || layout.work() > work_limit) {
            layout.undo(before);
            return std::nullopt;
        }
        layout.part(hardest.pair, hardest.sides[0].side);
        partings.push_back({hardest.pair, hardest.sides[0].side});
    }
    return partings;
}

}  // namespace wallwright::spacing
