// Where a group is above the floor that one stands on before it.
#pragma once

#include "geometry/floor_line.h"
#include "wall/project.h"

#include <span>

namespace wallwright::wall {

/// geometry::middle_above() of those of the pieces that have a place, one at least; in mm. On a
/// level floor the middle of what bounds them.
double middle_above_floor(const Project& project, std::span<const PieceId> pieces);

}  // namespace wallwright::wall
