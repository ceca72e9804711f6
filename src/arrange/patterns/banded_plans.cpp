#include "arrange/patterns/banded_plans.h"

#include "arrange/patterns/order.h"
#include "arrange/patterns/split.h"

namespace wallwright::arrange {

namespace {

constexpr SplitTaste kTastes[] = {{0.1, 0.3, 0}, {1, 0.05, 0}, {0.1, 0.15, -0.3}, {0.1, 0.15, 0.3}};

Plan ordered(const Task& task, const Plan& plan, Order order) {
    Plan result = plan;
    for (std::vector<std::uint32_t>& row : result.rows)
        row = in_order(task, std::move(row), direction_of(plan.pattern), order);
    return result;
}

}  // namespace

Direction direction_of(Pattern pattern) {
    return pattern == Pattern::columns ? Direction::down_the_wall : Direction::across_the_wall;
}

std::vector<Plan> banded_plans(const Task& task, const std::vector<std::uint32_t>& free,
                               Pattern pattern, std::size_t bands, bool all_lines,
                               const std::function<bool()>& go_on) {
    std::vector<Plan> plans;
    for (const SplitTaste& taste : kTastes) {
        if (!go_on())
            return plans;
        const Plan plan{pattern, RowLine::centre,
                        split_into(task, free, bands, direction_of(pattern), taste)};
        plans.push_back(ordered(task, plan, Order::large_inside));
        plans.push_back(ordered(task, plan, Order::large_outside));
    }
    if (all_lines)
        for (const RowLine line : {RowLine::low, RowLine::high}) {
            plans.push_back(plans.front());
            plans.back().line = line;
        }
    return plans;
}

}  // namespace wallwright::arrange
