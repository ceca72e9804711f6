// Where pieces cannot go: outside the wall, before doors and windows, behind furniture.
#pragma once

#include "spacing/even.h"
#include "wall/project.h"

#include <vector>

namespace wallwright::arrange {

/// Rectangles that together cover the fixtures, the furniture that hides what hangs behind it (a
/// lamp or a plant does not), and all that lies outside the outline within a piece's reach. A slope
/// becomes steps of 20 mm on the safe side.
std::vector<spacing::Obstacle> keep_outs(const wall::Room& room);

}  // namespace wallwright::arrange
