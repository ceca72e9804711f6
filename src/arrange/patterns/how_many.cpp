#include "arrange/patterns/how_many.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace wallwright::arrange {

namespace {

constexpr std::size_t kCountsMost = 4;
constexpr double kWorseMost =
    0.5;  // in the logarithm of the width: two thirds more, or two fifths less

double wanted_width(const Task& task) {
    if (!task.beneath)
        return task.wall.width() * 2 / 3;
    return task.beneath->place.width() * (task.beneath->share_least + task.beneath->share_most) / 2;
}

double height_at_most(const Task& task) {
    return task.beneath ? task.wall.top() - task.beneath->place.top() : task.wall.height();
}

/// Of so many bands of even length; unlike pieces make it a little larger.
geometry::Size block_of(const Task& task, const std::vector<std::uint32_t>& items,
                        Direction direction, std::size_t bands) {
    BandSize sum;
    for (const std::uint32_t item : items) {
        const BandSize size = band_size(task.items[item].size, direction);
        sum.length += size.length + task.gap;
        sum.thickness += size.thickness + task.gap;
    }
    const auto count = static_cast<double>(bands);
    const geometry::Size level{
        sum.length / count - task.gap,
        sum.thickness / static_cast<double>(items.size()) * count - task.gap};
    return direction == Direction::across_the_wall ? level : level.turned();
}

}  // namespace

std::vector<std::size_t> likely_counts(const Task& task, const std::vector<std::uint32_t>& items,
                                       Direction direction, std::size_t least) {
    std::vector<std::pair<double, std::size_t>> counts;
    // With fewer than two pieces a band they no longer read as rows or columns.
    for (std::size_t bands = least; 2 * bands <= items.size() + 1; ++bands) {
        const geometry::Size block = block_of(task, items, direction, bands);
        if (block.width <= task.wall.width() && block.height <= height_at_most(task))
            counts.push_back({std::abs(std::log(block.width / wanted_width(task))), bands});
    }
    std::ranges::sort(counts);
    std::vector<std::size_t> likely;
    for (const auto& [off, bands] : counts)
        if (likely.size() < kCountsMost && off <= counts.front().first + kWorseMost)
            likely.push_back(bands);
    return likely;
}

}  // namespace wallwright::arrange
