// Toward what a wall can grow: the choices, and how a sentence calls each.
#pragma once

#include "wall/project.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::desk {

/// "the Floor lamp", "the top left corner", "the point 2000, 1500 mm", "a part of the wall".
std::string words_of(const wall::Project& project, const wall::Target& target);

/// Furniture, fixtures and corners, and the project's own target when it is none of them.
std::vector<wall::Target> possible_targets(const wall::Project& project);

/// mm from the nearest piece on the wall to the target, 0 when one has reached it. Nothing without
/// a target, or when no piece is on the wall.
std::optional<double> distance_to_target(const wall::Project& project);

}  // namespace wallwright::desk
