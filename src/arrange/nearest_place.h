// The smallest move of a whole block that takes it clear of everything.
#pragma once

#include "arrange/task.h"

#include <optional>

namespace wallwright::arrange {

/// The shortest move by which every piece of the block is allowed by the wall and clear of the
/// pieces that stay. Best first over which side of each obstacle the block passes, so that the
/// answer is the nearest there is; nothing when there is none, or not found within a bounded amount
/// of work.
std::optional<WallVec> shortest_clearing_move(const Task& task, const Layout& block);

}  // namespace wallwright::arrange
