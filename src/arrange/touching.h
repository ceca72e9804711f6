// Where a finished block can touch the pieces that stay.
#pragma once

#include "arrange/task.h"

#include <span>
#include <vector>

namespace wallwright::arrange {

/// Moves that bring the block to `fixed` from the left, the right, above or below until one of its
/// pieces is the gap away, with an edge or a middle of both, or one of their pieces, in line (so
/// that rows and spines go on). No move twice, those least out of line with the whole first, at
/// most `most` from each side. Nobody has asked the wall yet.
std::vector<WallVec> touching_moves(const Task& task, const Layout& block,
                                    std::span<const Spot> fixed, std::size_t most);

}  // namespace wallwright::arrange
