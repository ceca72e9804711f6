#include "arrange/patterns/banded_plans.h"
#include "arrange/patterns/how_many.h"
#include "arrange/patterns/patterns.h"

#include <algorithm>

namespace wallwright::arrange {

std::optional<Layout> lay_out_spine(const Task& task, const Plan& plan) {
    if (plan.rows.size() < 2)
        return std::nullopt;
    return lay_out_bands(
        task, plan.rows,
        {Direction::across_the_wall, plan.line, edges_about_gaps(plan.rows.size())});
}

std::vector<Plan> spine_plans(const Task& task, const std::vector<std::uint32_t>& free,
                              const std::function<bool()>& go_on) {
    if (free.size() < 2)
        return {};
    std::vector<std::size_t> counts = likely_counts(task, free, Direction::across_the_wall, 2);
    // Two rows are even whatever the sizes.
    if (std::ranges::find(counts, std::size_t{2}) == counts.end())
        counts.push_back(2);
    std::vector<Plan> plans;
    for (const std::size_t rows : counts)
        std::ranges::move(banded_plans(task, free, Pattern::spine, rows,
                                       rows == counts.front() || rows == 2, go_on),
                          std::back_inserter(plans));
    return plans;
}

}  // namespace wallwright::arrange
