// Rectangles in as little room as can be.
#pragma once

#include "base/random.h"
#include "geometry/rect.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <span>
#include <vector>

namespace wallwright::arrange {

/// What is to be small, of the box around all: `area` mm2 a mm2, `width` and `height` a mm; `over`
/// for every mm of height above `height_free`; `shape` for every mm between the box's width and
/// `proportion` times its height. All 0 or more.
struct PackingGoal {
    double area = 0;
    double width = 0;
    double height = 0;
    double over = 0;
    double height_free = 0;
    double shape = 0;
    double proportion = 1;
};

struct Block {
    geometry::Size size;  ///< mm, above 0.
    bool may_turn = false;
};

struct Packing {
    std::vector<geometry::Point<geometry::Wall>> at;  ///< Lower left corners, the box's at 0, 0.
    std::vector<bool> turned;
    geometry::Size box;
    double cost = 0;
    bool operator==(const Packing&) const = default;
};

/// What `goal` says about every box that holds this one: its cost without the shape, as that alone
/// can become less when a box grows.
inline double least_cost_of(const PackingGoal& goal, geometry::Size box) {
    return goal.area * box.area() + goal.width * box.width + goal.height * box.height +
           goal.over * std::max(0.0, box.height - goal.height_free);
}

/// What `goal` says about a box.
inline double cost_of(const PackingGoal& goal, geometry::Size box) {
    return least_cost_of(goal, box) +
           goal.shape * std::abs(box.width - goal.proportion * box.height);
}

/// One annealing run of `moves` moves (O(blocks) each) from a random tree; the best it met, pushed
/// together. No two blocks overlap, and each one touches another or the box's edge to its left, and
/// below. For gaps, grow the blocks by the gap first. More moves are better on the whole, not for
/// each seed.
Packing pack(std::span<const Block> blocks, const PackingGoal& goal, std::uint64_t moves,
             Random& random);

}  // namespace wallwright::arrange
