// Whether the group hangs above the furniture that it is to read as one with, and what follows.
#pragma once

#include "arrange/view.h"

#include <optional>

namespace wallwright::arrange {

/// mm from the furniture's top to the lowest edge above it. Nothing when there is no furniture, a
/// piece is behind it, or the two share less than half of the narrower's width: as rules/ sees it.
std::optional<double> clearance_above(const View& view);

/// True for a task with furniture to hang above.
bool above_furniture(const Task& task);

/// mm above the floor where the group's middle belongs: at the centre height or, above furniture,
/// as near to it as the clearance leaves.
double right_middle(const View& view);

}  // namespace wallwright::arrange
