// What is said to be in the drawer.
#pragma once

#include "base/problem.h"
#include "wall/project.h"

namespace wallwright::edits {

/// So many of the type in all; 0 takes it out of the stock.
Result<wall::Project> set_stock(wall::Project project, const wall::FixingTypeId& type, int count);

}  // namespace wallwright::edits
