// Toward what a group grows, as a person types and reads it.
#pragma once

#include "base/problem.h"
#include "wall/project.h"

#include <string>

namespace wallwright::cli {

/// The id of a piece of furniture or a fixture, the name of a corner ("top_right"), or a point on
/// the wall as "across,up" ("3800,1500", "31,5 cm,120 cm"), bare numbers in `unit`. A Problem says
/// what there is to choose from.
Result<wall::Target> read_target(const std::string& text, const wall::Project& project,
                                 units::LengthUnit unit);

/// "the lamp", "the wall's top right corner", "the point 3800 mm across and 1500 mm up".
std::string target_words(const wall::Project& project, const wall::Target& target,
                         units::LengthUnit unit);

}  // namespace wallwright::cli
