// Toward what a group grows, as a person types it.
#pragma once

#include "base/problem.h"
#include "wall/project.h"

#include <string>

namespace wallwright::cli {

/// The id or title of a piece of furniture or a fixture in any case, the name of a corner
/// ("top_right"), or a point on the wall as "across,up" ("3800,1500", "31,5 cm,120 cm"), bare
/// numbers in `unit`. A Problem says what there is to choose from.
Result<wall::Target> read_target(const std::string& text, const wall::Project& project,
                                 units::LengthUnit unit);

}  // namespace wallwright::cli
