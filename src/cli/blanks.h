// Blanks from a table.
#pragma once

#include "base/problem.h"
#include "mounts/nest/task.h"
#include "units/length.h"

#include <string>
#include <vector>

namespace wallwright::cli {

/// From a CSV file with the columns id (or title), width and height (or size), and perhaps count
/// and turn (yes or no). The mm that a name ends on (width_mm) is understood; else a number without
/// a unit is in `bare`. Of several alike the second is "kelp#2".
Result<std::vector<mounts::NestBlank>> read_blanks(const std::string& file, units::LengthUnit bare);

}  // namespace wallwright::cli
