#include "arrange/elite.h"

#include <algorithm>

namespace wallwright::arrange {

namespace {

constexpr double kAlike = 0.08;  ///< Less different than this reads as the same layout.
constexpr std::size_t kKeptOfAPattern = 6;

/// How different from all that were chosen, and how many of its pattern, the strictest first. What
/// a person can choose between matters more than the last point of the total.
struct Demand {
    double difference = 0;
    std::size_t of_a_pattern = 0;
};
constexpr Demand kDemands[] = {{0.25, 1}, {0.25, 2}, {0.15, 3}, {kAlike, SIZE_MAX}};

bool is_wanted(const Found& one, const std::vector<Found>& chosen, const Demand& demand) {
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
    std::vector<std::size_t> of_its_pattern;
    std::vector<std::size_t> beaten;
    for (std::size_t i = 0; i < found_.size(); ++i) {
        if (found_[i].pattern != found.pattern)
            continue;
        of_its_pattern.push_back(i);
        if (difference(found_[i].layout, found.layout) >= kAlike)
            continue;
        if (!is_better(found, found_[i]))
            return false;
        beaten.push_back(i);
    }
    if (beaten.empty() && of_its_pattern.size() >= kKeptOfAPattern) {
        const std::size_t worst = *std::ranges::max_element(
            of_its_pattern,
            [this](std::size_t a, std::size_t b) { return is_better(found_[a], found_[b]); });
        if (!is_better(found, found_[worst]))
            return false;
        beaten.push_back(worst);
    }
    for (auto i = beaten.rbegin(); i != beaten.rend(); ++i)
        found_.erase(found_.begin() + static_cast<std::ptrdiff_t>(*i));
    found_.push_back(found);
    return true;
}

const Found* Elite::best_of(Pattern pattern) const {
    const Found* best = nullptr;
    for (const Found& one : found_)
        if (one.pattern == pattern && (best == nullptr || is_better(one, *best)))
            best = &one;
    return best;
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
