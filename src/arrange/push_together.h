// Blocks pushed to the left and down as far as they go.
#pragma once

#include "arrange/packing.h"

namespace wallwright::arrange {

/// The packing with every block against another or the box's edge on its left and below; as it was
/// where that would cost more (a smaller box may be of a worse shape).
Packing push_together(std::span<const Block> blocks, const PackingGoal& goal, Packing packing);

}  // namespace wallwright::arrange
