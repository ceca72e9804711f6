#include "arrange/patterns/order.h"

#include <algorithm>
#include <array>
#include <deque>
#include <optional>
#include <utility>

namespace wallwright::arrange {

namespace {

using Couple = std::array<std::uint32_t, 2>;  // the smaller first

struct Paired {
    std::vector<Couple> couples;  ///< From small to large.
    std::optional<std::uint32_t> alone;
};

bool same_size(const Task& task, std::uint32_t a, std::uint32_t b) {
    return is_same_size(task.items[a].size, task.items[b].size);
}

/// Pieces of one size first with each other, those left over with the next in size.
Paired in_couples(const Task& task, const std::vector<std::uint32_t>& by_size) {
    Paired paired;
    std::vector<std::pair<std::size_t, Couple>> couples;
    std::vector<std::size_t> single;
    for (std::size_t i = 0; i < by_size.size(); ++i) {
        if (i + 1 < by_size.size() && same_size(task, by_size[i], by_size[i + 1])) {
            couples.push_back({i, {by_size[i], by_size[i + 1]}});
            ++i;
        } else {
            single.push_back(i);
        }
    }
    if (single.size() % 2 == 1) {
        paired.alone = by_size[single.back()];
        single.pop_back();
    }
    for (std::size_t i = 0; i < single.size(); i += 2)
        couples.push_back({single[i], {by_size[single[i]], by_size[single[i + 1]]}});
    std::ranges::sort(couples);
    for (const auto& [place, couple] : couples)
        paired.couples.push_back(couple);
    return paired;
}

/// Upright and oblong couples by turns, whichever there are more of at the ends.
std::vector<Couple> by_turns(const Task& task, const std::vector<Couple>& couples) {
    std::array<std::deque<Couple>, 2> kinds;
    for (const Couple& couple : couples) {
        const geometry::Size& size = task.items[couple[1]].size;
        kinds[size.width > size.height ? 1 : 0].push_back(couple);
    }
    std::size_t turn = kinds[1].size() > kinds[0].size() ? 1 : 0;
    std::vector<Couple> mixed;
    while (mixed.size() < couples.size()) {
        if (kinds[turn].empty())
            turn = 1 - turn;
        mixed.push_back(kinds[turn].front());
        kinds[turn].pop_front();
        turn = 1 - turn;
    }
    return mixed;
}

/// The first couple at the ends, the last one inside, with `alone` in the middle.
std::vector<std::uint32_t> from_the_ends(const Task& task, const std::vector<Couple>& couples,
                                         const std::optional<std::uint32_t>& alone) {
    std::vector<std::uint32_t> start;
    std::vector<std::uint32_t> end;
    double lean = 0;  // mm2 that the start has more than the end
    for (const Couple& couple : couples) {
        const std::size_t to_the_start = lean > 0 ? 0 : 1;
        start.push_back(couple[to_the_start]);
        end.push_back(couple[1 - to_the_start]);
        lean += task.items[start.back()].size.area() - task.items[end.back()].size.area();
    }
    if (alone)
        start.push_back(*alone);
    start.insert(start.end(), end.rbegin(), end.rend());
    return start;
}

}  // namespace

std::vector<std::uint32_t> in_order(const Task& task, std::vector<std::uint32_t> items,
                                    Direction direction, Order order) {
    const auto key = [&](std::uint32_t item) {
        const BandSize size = band_size(task.items[item].size, direction);
        return std::pair(size.thickness, size.length);
    };
    std::ranges::stable_sort(items, {}, key);
    Paired paired = in_couples(task, items);
    if (order == Order::large_outside)
        std::ranges::reverse(paired.couples);
    if (order == Order::alternating)
        paired.couples = by_turns(task, paired.couples);
    return from_the_ends(task, paired.couples, paired.alone);
}

}  // namespace wallwright::arrange
