#include "arrange/pattern.h"

#include "arrange/patterns/patterns.h"
#include "arrange/patterns/with_wishes.h"
#include "arrange/settle.h"
#include "base/contract.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <span>

namespace wallwright::arrange {

namespace {

constexpr std::size_t kUnevenMost = 2;  // plans of a pattern
constexpr double kAlike = 30;           // mm; places nearer than this look the same
constexpr double kAstrayMost = 120;     // mm farther from where it should hang than another plan

using Shape = std::vector<std::array<std::int64_t, 4>>;

/// What is seen of a block: roughly the places, whichever of two like pieces is where.
Shape shape_of(const Layout& block) {
    const auto rounded = [](double at) { return std::llround(at / kAlike); };
    Shape shape;
    for (const auto& [item, place] : block)
        shape.push_back({rounded(place.min.x), rounded(place.min.y), rounded(place.max.x),
                         rounded(place.max.y)});
    std::ranges::sort(shape);
    return shape;
}

/// A plan that can hang.
struct Proposal {
    Plan plan;
    std::size_t uneven = 0;
    double astray = 0;  ///< mm from where the group should hang; 0 where pieces stay.
};

/// From the wanted centre, and what is missing of the clearance above the furniture.
double astray(const Task& task, const Layout& settled) {
    if (std::ranges::any_of(
            settled, [&](const Spot& one) { return task.items[one.item].fixed.has_value(); }))
        return 0;
    const WallRect bounds = bounds_of(settled);
    const double off = geometry::distance(bounds.centre(), wanted_centre(task, bounds.height()));
    if (!task.beneath)
        return off;
    const double lowest = task.beneath->place.top() + task.beneath->clearance_least;
    return off + std::max(0.0, lowest - bounds.bottom());
}

/// Those that can be laid out and settled, without those that look like an earlier one.
std::vector<Proposal> that_can_hang(const Task& task, const std::vector<Plan>& plans) {
    std::set<Shape> seen;
    std::vector<Proposal> proposals;
    for (const Plan& likely : plans) {
        Plan plan = with_wishes(task, likely);
        const std::optional<Layout> block = lay_out(task, plan);
        if (!block || !seen.insert(shape_of(*block)).second)
            continue;
        if (const std::optional<Layout> settled = settle(task, *block))
            proposals.push_back(
                {std::move(plan), uneven_gaps(task, *block), astray(task, *settled)});
    }
    return proposals;
}

/// Without those that find room only beside where the others hang, and without the most uneven.
void keep_the_likely(std::vector<Proposal>& proposals) {
    if (proposals.empty())
        return;
    const double least = std::ranges::min(proposals, {}, &Proposal::astray).astray;
    std::erase_if(proposals,
                  [least](const Proposal& one) { return one.astray > least + kAstrayMost; });
    std::ranges::stable_sort(proposals, {}, &Proposal::uneven);
    const auto even =
        static_cast<std::size_t>(std::ranges::count(proposals, std::size_t{0}, &Proposal::uneven));
    proposals.resize(std::min(proposals.size(), even + kUnevenMost));
}

std::vector<Plan> plans_of(const Task& task, const std::vector<std::uint32_t>& free,
                           Pattern pattern, const std::function<bool()>& go_on) {
    switch (pattern) {
        case Pattern::row:
            return row_plans(task, free, go_on);
        case Pattern::spine:
            return spine_plans(task, free, go_on);
        case Pattern::columns:
            return columns_plans(task, free, go_on);
        case Pattern::grid:
            return grid_plans(task, free);
        case Pattern::salon:
            break;
    }
    return {};
}

}  // namespace

std::optional<Layout> lay_out(const Task& task, const Plan& plan) {
    WW_EXPECT(std::ranges::none_of(plan.rows, &std::vector<std::uint32_t>::empty),
              "no row of a plan is empty");
    if (plan.rows.empty())
        return std::nullopt;
    switch (plan.pattern) {
        case Pattern::row:
            return lay_out_row(task, plan);
        case Pattern::spine:
            return lay_out_spine(task, plan);
        case Pattern::columns:
            return lay_out_columns(task, plan);
        case Pattern::grid:
            return lay_out_grid(task, plan);
        case Pattern::salon:
            return std::nullopt;
    }
    return std::nullopt;
}

std::size_t uneven_gaps(const Task& task, const Layout& block) {
    std::vector<WallRect> places;
    for (const Spot& spot : block)
        places.push_back(spot.place);
    return static_cast<std::size_t>(std::ranges::count_if(
        spacing::facing_pairs(places, task.reach), [&](const spacing::Facing& facing) {
            return std::abs(facing.size - task.gap) > geometry::kLengthEps;
        }));
}

std::vector<Plan> first_plans(const Task& task, Pattern pattern,
                              const std::function<bool()>& go_on) {
    const std::vector<std::uint32_t> free = free_items(task);
    if (free.empty() || pattern == Pattern::salon)
        return {};
    std::vector<Proposal> proposals = that_can_hang(task, plans_of(task, free, pattern, go_on));
    keep_the_likely(proposals);
    std::vector<Plan> first;
    for (Proposal& proposal : proposals)
        first.push_back(std::move(proposal.plan));
    return first;
}

std::vector<Plan> first_plans(const Task& task) {
    std::vector<Plan> first;
    for (const Pattern pattern : {Pattern::grid, Pattern::row, Pattern::spine, Pattern::columns})
        for (Plan& plan : first_plans(task, pattern))
            first.push_back(std::move(plan));
    return first;
}

}  // namespace wallwright::arrange
