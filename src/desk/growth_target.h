// Toward what a wall can grow, and how far it is.
#pragma once

#include "wall/project.h"

#include <optional>
#include <vector>

namespace wallwright::desk {

/// Furniture, fixtures and corners, and the project's own target when it is none of them.
std::vector<wall::Target> possible_targets(const wall::Project& project);

/// mm from the nearest piece on the wall to the target, 0 when one has reached it. Nothing without
/// a target, or when no piece is on the wall.
std::optional<double> distance_to_target(const wall::Project& project);

}  // namespace wallwright::desk
