// What is said to be in the drawer.
#pragma once

#include "base/problem.h"
#include "wall/project.h"

#include <optional>

namespace wallwright::edits {

/// So many of the type in all; 0 takes it out of the stock, unless its pack or price was set.
Result<wall::Project> set_stock(wall::Project project, const wall::FixingTypeId& type, int count);

/// How the person's shop sells the type; without a value, as the catalogue says.
Result<wall::Project> set_pack(wall::Project project, const wall::FixingTypeId& type,
                               std::optional<int> pack, std::optional<double> price);

}  // namespace wallwright::edits
