#include "arrange/elite.h"

#include <algorithm>

namespace wallwright::arrange {

namespace {

constexpr double kAlike = 0.08;  ///< Less different than this reads as the same layout.
constexpr std::size_t kKeptOfAPattern = 6;

/// How different from all that were chosen, how many of its pattern, and how many points under the
/// best at most; the strictest first. What a person can choose between matters more than the last
/// point of the total, but not more than that one would hang it.
struct Demand {
    double difference = 0;
    std::size_t of_a_pattern = 0;
    double points = 0;
};
constexpr Demand kDemands[] = {
    {0.25, 1, 6}, {0.25, 2, 6}, {0.15, 3, 6}, {0.25, 2, 15}, {kAlike, SIZE_MAX, 100}};

bool is_wanted(const Found& one, const std::vector<Found>& chosen, const Demand& demand) {
    if (!chosen.empty() && one.total < chosen.front().total - demand.points)
        return false;
    std::size_t of_its_pattern = 0;
    for (const Found& other : chosen) {
        of_its_pattern += other.pattern == one.pattern ? 1U : 0U;
        if (difference(other.layout, one.layout) < demand.difference)
            return false;
    }
    return of_its_pattern < demand.of_a_pattern;
}

}  // namespace

bool is_better(const Found& a, const Found& b) {
    return a.left_out != b.left_out ? a.left_out < b.left_out : a.total > b.total;
}

bool Elite::offer(const Found& found) {
    const auto of_its_pattern = [&found](const Found& one) { return one.pattern == found.pattern; };
    const auto alike = [&](const Found& one) {
        return of_its_pattern(one) && difference(one.layout, found.layout) < kAlike;
    };
    const auto no_better = [&](const Found& one) { return alike(one) && !is_better(found, one); };
    if (std::ranges::any_of(found_, no_better))
        return false;
    const std::size_t beaten = std::erase_if(found_, alike);
    if (beaten == 0 &&
        std::ranges::count_if(found_, of_its_pattern) >= std::ptrdiff_t{kKeptOfAPattern}) {
        const auto worst = std::ranges::max_element(found_, [&](const Found& a, const Found& b) {
            return of_its_pattern(b) && (!of_its_pattern(a) || is_better(a, b));
        });
        if (!is_better(found, *worst))
            return false;
        found_.erase(worst);
    }
    found_.push_back(found);
    return true;
}

std::vector<Found> choose_different(std::vector<Found> found, std::size_t count) {
    std::ranges::stable_sort(found, is_better);
    std::vector<Found> chosen;
    std::vector<bool> taken(found.size(), false);
    for (const Demand& demand : kDemands)
        for (std::size_t i = 0; i < found.size() && chosen.size() < count; ++i)
            if (!taken[i] && is_wanted(found[i], chosen, demand)) {
                taken[i] = true;
                chosen.push_back(found[i]);
            }
    std::ranges::stable_sort(chosen, is_better);
    return chosen;
}

}  // namespace wallwright::arrange
