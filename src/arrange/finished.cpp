#include "arrange/finished.h"

#include "arrange/salon.h"
#include "arrange/score.h"

#include <algorithm>
#include <vector>

namespace wallwright::arrange {

namespace {

constexpr std::uint32_t kGone = UINT32_MAX;

/// The task with the pieces of the layout alone.
struct Smaller {
    Task task;
    std::vector<std::uint32_t> new_index;  ///< By the old one; kGone for the others.
};

Smaller with_pieces_of(const Task& task, const Layout& layout) {
    Smaller smaller{task, std::vector<std::uint32_t>(task.items.size(), kGone)};
    smaller.task.items.clear();
    for (std::uint32_t i = 0; i < task.items.size(); ++i) {
        if (std::ranges::find(layout, i, &Spot::item) == layout.end())
            continue;
        smaller.new_index[i] = static_cast<std::uint32_t>(smaller.task.items.size());
        smaller.task.items.push_back(task.items[i]);
    }
    for (ItemWish& wish : smaller.task.wishes) {
        wish.first = smaller.new_index[wish.first];
        wish.second = smaller.new_index[wish.second];
    }
    std::erase_if(smaller.task.wishes,
                  [](const ItemWish& wish) { return wish.first == kGone || wish.second == kGone; });
    return smaller;
}

}  // namespace

std::optional<double> best_total_of_same(const Task& task, const Layout& layout, std::uint64_t seed,
                                         std::uint64_t tries, const std::function<bool()>& go_on) {
    constexpr std::uint64_t kAtOnce = 4;
    if (!go_on())
        return {};
    const Smaller smaller = with_pieces_of(task, layout);
    Layout start;
    for (const Spot& spot : layout)
        start.push_back({smaller.new_index[spot.item], spot.place});
    Salon salon(smaller.task, seed, std::move(start));
    std::uint64_t done = 0;
    do {
        salon.run(std::min(kAtOnce, tries - done));
        done += kAtOnce;
    } while (done < tries && go_on());
    return salon.total();
}

}  // namespace wallwright::arrange
