// How every edit ends.
#pragma once

#include "base/problem.h"
#include "wall/project.h"

namespace wallwright::edits {

/// mm as a project file keeps them, to 0.01.
double to_file_step(double mm);

/// The project with its places, weights, prices, sheets of card and kept blanks as a file keeps
/// them, so that saving and opening it changes none; or its first fault.
Result<wall::Project> sound(wall::Project project);

}  // namespace wallwright::edits
