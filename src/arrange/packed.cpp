#include "arrange/packed.h"

#include "arrange/packing.h"
#include "arrange/settle.h"

namespace wallwright::arrange {

namespace {

constexpr std::uint64_t kMoves = 10000;  ///< A few ms for a dozen pieces.

/// Twice as wide as high over furniture, on the whole: our choice.
constexpr double kLeastProportion = 0.8;
constexpr double kMostProportion = 2.4;

}  // namespace

std::optional<Layout> packed(const Task& task, Random& random) {
    const std::vector<std::uint32_t> items = free_items(task);
    if (items.empty())
        return std::nullopt;
    std::vector<Block> blocks;
    for (const std::uint32_t item : items) {
        const geometry::Size size = task.items[item].size;
        blocks.push_back({{size.width + task.gap, size.height + task.gap}, false});
    }
    PackingGoal goal;
    goal.width = 1;
    goal.height = 1;
    goal.shape = 1;
    goal.proportion = random.uniform(kLeastProportion, kMostProportion);
    const Packing packing = pack(blocks, goal, kMoves, random);
    Layout block;
    for (std::size_t i = 0; i < items.size(); ++i)
        block.push_back({items[i], WallRect::at(packing.at[i], task.items[items[i]].size)});
    return settle(task, block);
}

}  // namespace wallwright::arrange
