#include "arrange/patterns/with_wishes.h"

#include "arrange/measure.h"
#include "base/contract.h"

#include <algorithm>
#include <set>
#include <utility>

namespace wallwright::arrange {

namespace {

double kept(const Task& task, const Plan& plan) {
    static const Measure* const kMeasure = find_measure("wishes");
    WW_EXPECT(kMeasure != nullptr, "wishes are measured");
    const std::optional<Layout> block = lay_out(task, plan);
    return block ? kMeasure->value(View(task, *block)) : -1;
}

std::set<std::uint32_t> wished(const Task& task) {
    std::set<std::uint32_t> items;
    for (const ItemWish& wish : task.wishes)
        items.insert({wish.first, wish.second});
    return items;
}

Plan swapped(const Plan& plan, std::uint32_t one, std::uint32_t other) {
    Plan result = plan;
    for (std::vector<std::uint32_t>& row : result.rows)
        for (std::uint32_t& item : row)
            if (item == one || item == other)
                item = item == one ? other : one;
    return result;
}

/// False when no swap is better.
bool swap_best(const Task& task, Plan& plan) {
    const std::vector<std::uint32_t> free = free_items(task);
    double most = kept(task, plan) + 1e-9;
    std::optional<Plan> best;
    for (const std::uint32_t item : wished(task))
        for (const std::uint32_t other : free) {
            if (task.items[item].fixed || item == other)
                continue;
            Plan next = swapped(plan, item, other);
            if (const double value = kept(task, next); value > most) {
                most = value;
                best = std::move(next);
            }
        }
    if (best)
        plan = std::move(*best);
    return best.has_value();
}

}  // namespace

Plan with_wishes(const Task& task, Plan plan) {
    for (std::size_t swaps = 0; swaps < 2 * task.wishes.size(); ++swaps)
        if (!swap_best(task, plan))
            break;
    return plan;
}

}  // namespace wallwright::arrange
