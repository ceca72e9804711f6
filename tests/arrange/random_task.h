// Walls with pieces of random sizes, for laws that hold on all of them.
#pragma once

#include "arrange/measure.h"
#include "arrange/pattern.h"
#include "base/random.h"
#include "spacing/group.h"

#include <string>

namespace wallwright::arrange::test {

/// A bare wall, with all that lies outside it kept out.
inline Task wall_task(geometry::Size wall) {
    Task task;
    task.wall = WallRect::at({0, 0}, wall);
    const WallRect around = task.wall.grown(10000);
    task.keep_out = {{around.min, {0, around.max.y}},
                     {{wall.width, around.min.y}, around.max},
                     {around.min, {around.max.x, 0}},
                     {{around.min.x, wall.height}, around.max}};
    for (const Measure& measure : all_measures())
        task.weights.push_back(measure.usual_weight);
    return task;
}

inline std::uint32_t add_item(Task& task, geometry::Size size) {
    Item item;
    item.id = {"piece" + std::to_string(task.items.size())};
    item.size = size;
    task.items.push_back(item);
    return static_cast<std::uint32_t>(task.items.size() - 1);
}

inline void add_fixed(Task& task, WallPoint at, geometry::Size size) {
    task.items[add_item(task, size)].fixed = at;
}

/// Free pieces from 150 to 800 mm, in steps of 50 so that some are alike, on a wall large enough.
inline Task any_task(Random& random, std::size_t pieces) {
    Task task = wall_task({12000, 6000});
    task.gap = random.uniform(40, 80);
    task.reach = spacing::group_reach(task.gap);
    task.centre_height = 2500;
    const auto side = [&random] { return 150 + 50 * static_cast<double>(random.below(14)); };
    for (std::size_t i = 0; i < pieces; ++i)
        add_item(task, {side(), side()});
    return task;
}

/// All free pieces in so many rows, at random; none is empty.
inline Plan any_plan(const Task& task, Pattern pattern, std::size_t rows, Random& random) {
    Plan plan{pattern, static_cast<RowLine>(random.below(3)), {}};
    plan.rows.resize(rows);
    std::vector<std::uint32_t> items = free_items(task);
    for (std::size_t i = items.size(); i > 1; --i)
        std::swap(items[i - 1], items[random.below(i)]);
    for (std::size_t i = 0; i < items.size(); ++i)
        plan.rows[i < rows ? i : random.below(rows)].push_back(items[i]);
    return plan;
}

}  // namespace wallwright::arrange::test
