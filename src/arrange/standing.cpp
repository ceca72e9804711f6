#include "arrange/standing.h"

#include "base/contract.h"
#include "spacing/group.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace wallwright::arrange {

namespace {

constexpr double kSameLength = 0.02;  // mm; twice the step of a file

/// Facing across `across` at the gap, side by side for `along` mm of sides this long.
bool faces_at_gap(double gap, double across, double along, double side_a, double side_b) {
    constexpr double kLeastShare = 0.25;
    return std::abs(-across - gap) <= kSameLength &&
           along >= kLeastShare * std::min(side_a, side_b) - kSameLength;
}

}  // namespace

std::vector<Layout> standing_groups(const Task& task) {
    std::vector<wall::Placed> placed;
    for (const Item& item : task.items)
        if (item.fixed)
            placed.push_back({item.id, WallRect::at(*item.fixed, item.size), true});
    std::vector<Layout> groups;
    for (const spacing::Group& group : spacing::find_groups(placed, task.reach)) {
        Layout& layout = groups.emplace_back();
        for (const Spot& spot : fixed_part(task))
            if (std::ranges::find(group.pieces, task.items[spot.item].id) != group.pieces.end())
                layout.push_back(spot);
    }
    return groups;
}

double distance_between(std::span<const Spot> layout, const WallRect& place) {
    WW_EXPECT(!layout.empty(), "the distance to a group asks for one with pieces");
    double least = std::numeric_limits<double>::infinity();
    for (const Spot& spot : layout)
        least = std::min(least, distance_between(spot.place, place));
    return least;
}

bool touches(const Task& task, std::span<const Spot> layout, const WallRect& place) {
    return std::ranges::any_of(layout, [&](const Spot& spot) {
        const WallRect& one = spot.place;
        const double x = geometry::overlap_x(one, place);
        const double y = geometry::overlap_y(one, place);
        return faces_at_gap(task.gap, x, y, one.height(), place.height()) ||
               faces_at_gap(task.gap, y, x, one.width(), place.width());
    });
}

double leads_on(const Task& task, std::span<const Spot> pieces, const WallRect& place,
                const std::optional<WallRect>& target) {
    if (!target)
        return 0;
    const double before = distance_between(pieces, *target) - task.gap;
    const double after = distance_between(place, *target) - task.gap;
    return before <= 0 ? 0 : std::clamp((before - std::max(0.0, after)) / before, 0.0, 1.0);
}

double sunk_below_furniture(std::span<const Beneath> furniture, const WallRect& place) {
    constexpr double kBeside = 500;  // mm, about the width of a frame (our choice)
    double most = 0;
    for (const Beneath& one : furniture)
        if (geometry::overlap_x(one.place, place) >= -kBeside) {
            const double clear = place.bottom() - one.place.top();
            most = std::max(most, 1 - clear / std::max(1.0, one.clearance_least));
        }
    return std::min(most, 1.0);
}

}  // namespace wallwright::arrange
