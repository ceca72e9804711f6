// Rectangles in as little room as can be: annealing over B*-trees.
#pragma once

#include "base/random.h"
#include "geometry/rect.h"

#include <cstdint>
#include <functional>
#include <span>
#include <vector>

namespace wallwright::arrange {

/// What is to be small, of the box around all: `area` mm2 a mm2, `width` and `height` a mm; `over`
/// for every mm of height above `height_free`. All 0 or more.
struct PackingGoal {
    double area = 0;
    double width = 0;
    double height = 0;
    double over = 0;
    double height_free = 0;
};

struct Block {
    geometry::Size size;
    bool may_turn = false;
};

struct Packing {
    std::vector<geometry::Point<geometry::Wall>> at;  ///< Lower left corners, the box's at 0, 0.
    std::vector<bool> turned;
    geometry::Size box;
    double cost = 0;
};

/// What `goal` says about a box.
double cost_of(const PackingGoal& goal, geometry::Size box);

/// One annealing run of `moves` moves (O(blocks) each) from a random tree; the best it met. No two
/// blocks overlap. For gaps, grow the blocks by the gap first.
Packing pack(std::span<const Block> blocks, const PackingGoal& goal, std::uint64_t moves,
             Random& random);

/// Runs of growing length on `threads` threads until `go_on` gives false, asked between runs and
/// every few thousand moves; the best of all.
Packing pack_until(std::span<const Block> blocks, const PackingGoal& goal, std::uint64_t seed,
                   unsigned threads, const std::function<bool()>& go_on);

}  // namespace wallwright::arrange
