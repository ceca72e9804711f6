#include "spacing/improve.h"

#include "base/random.h"

#include <algorithm>
#include <cmath>

namespace wallwright::spacing {

namespace {

constexpr std::uint64_t kSeed = 1;
constexpr std::size_t kFreedLeast = 2;  // bodies freed at a time
constexpr std::size_t kFreedAtFirst = 6;
constexpr std::size_t kFreedMost = 14;
constexpr std::uint64_t kWorkPerTry = 10'000;
constexpr std::uint64_t kIdleTriesPerBody = 2;
constexpr double kHopelessShare = 1e-8;  // of the whole search, done in the first tenth of the work

/// The clear distance between two rectangles, squared; 0 when they overlap.
double distance_squared(const WallRect& a, const WallRect& b) {
    const double x = std::max(0.0, -geometry::overlap_x(a, b));
    const double y = std::max(0.0, -geometry::overlap_y(a, b));
    return x * x + y * y;
}

class NeighbourhoodSearch {
  public:
    NeighbourhoodSearch(Layout& layout, Solution& solution) : layout_(layout), solution_(solution) {
        look_up_places();
    }

    /// Ends early when many tries in a row have found nothing.
    void run(std::uint64_t work) {
        const std::uint64_t work_limit = layout_.work() + work;
        const std::uint64_t idle_limit = kIdleTriesPerBody * layout_.size();
        for (std::uint64_t idle = 0; idle < idle_limit && layout_.work() < work_limit; ++idle) {
            const std::uint64_t left = work_limit - layout_.work();
            if (try_neighbourhood(std::min(left, kWorkPerTry))) {
                look_up_places();
                idle = 0;
            }
        }
    }

  private:
    bool try_neighbourhood(std::uint64_t work) {
        const std::vector<std::uint8_t> freed = choose_neighbourhood();
        const bool wide = random_.below(2) == 0;
        std::vector<Parting> kept;
        for (const Parting& parting : solution_.partings) {
            const int ends_freed = freed[parting.pair.first] + freed[parting.pair.second];
            if (ends_freed < (wide ? 1 : 2)) {
                kept.push_back(parting);
            }
        }
        const Layout::Mark before = layout_.mark();
        for (const Parting& parting : kept) {
            layout_.part(parting.pair, parting.side);
        }
        const Proof found = search_sides(layout_, solution_.cost, work);
        layout_.undo(before);
        if (found.better) {
            kept.insert(kept.end(), found.partings.begin(), found.partings.end());
            solution_.partings = std::move(kept);
            solution_.cost = found.cost;
        }
        fit_neighbourhood(found);
        return found.better;
    }

    /// Neighbourhoods are kept about as large as a try can search to its end.
    void fit_neighbourhood(const Proof& found) {
        if (found.complete) {
            freed_count_ = std::min(freed_count_ + 1, kFreedMost);
        } else if (!found.better) {
            freed_count_ = std::max(freed_count_ - 1, kFreedLeast);
        }
    }

    /// One body at random and those nearest to it.
    std::vector<std::uint8_t> choose_neighbourhood() {
        const auto middle = static_cast<std::size_t>(random_.below(places_.size()));
        std::vector<std::pair<double, std::size_t>> by_distance;
        for (std::size_t i = 0; i < places_.size(); ++i) {
            by_distance.emplace_back(distance_squared(places_[i], places_[middle]), i);
        }
        const std::size_t count = std::min(freed_count_, by_distance.size());
        std::partial_sort(by_distance.begin(),
                          by_distance.begin() + static_cast<std::ptrdiff_t>(count),
                          by_distance.end());
        std::vector<std::uint8_t> freed(places_.size(), 0);
        for (std::size_t i = 0; i < count; ++i) {
            freed[by_distance[i].second] = 1;
        }
        return freed;
    }

    void look_up_places() {
        const Layout::Mark before = layout_.mark();
        for (const Parting& parting : solution_.partings) {
            layout_.part(parting.pair, parting.side);
        }
        places_.clear();
        for (std::size_t i = 0; i < layout_.size(); ++i) {
            places_.push_back(layout_.place(i));
        }
        layout_.undo(before);
    }

    Layout& layout_;
    Solution& solution_;
    std::vector<WallRect> places_;
    std::size_t freed_count_ = kFreedAtFirst;
    Random random_{kSeed};
};

Proof search_all(Layout& layout, Solution& solution, std::uint64_t work) {
    Proof proof = search_sides(layout, solution.cost, work);
    if (proof.better) {
        solution.partings = std::move(proof.partings);
        solution.cost = proof.cost;
    }
    solution.least_proved = proof.complete;
    return proof;
}

void try_hardest_first(Layout& layout, Solution& solution, std::uint64_t work) {
    const Layout::Mark before = layout.mark();
    const auto partings = part_hardest_first(layout, work);
    if (partings && layout.cost() < solution.cost) {
        solution.partings = *partings;
        solution.cost = layout.cost();
    }
    layout.undo(before);
}

}  // namespace

Solution improve(Layout& layout, Solution start, std::uint64_t work) {
    Solution solution = std::move(start);
    solution.least_proved = solution.cost == 0;
    if (work == 0 || solution.least_proved) {
        return solution;
    }
    const std::uint64_t work_limit = layout.work() + work;
    const Proof first = search_all(layout, solution, work / 10);
    if (first.complete) {
        return solution;
    }
    try_hardest_first(layout, solution, work / 10);
    const bool hopeless = first.share < kHopelessShare;
    const std::uint64_t left = work_limit - std::min(work_limit, layout.work());
    NeighbourhoodSearch(layout, solution).run(hopeless ? left : left / 2);
    if (!hopeless && layout.work() < work_limit) {
        search_all(layout, solution, work_limit - layout.work());
    }
    return solution;
}

}  // namespace wallwright::spacing
