// Plans of several bands, for the spine and for columns.
#pragma once

#include "arrange/patterns/bands.h"

#include <functional>

namespace wallwright::arrange {

/// In so many bands: the pieces split in several ways (evenly, alike together, large ones first or
/// last), in several orders and, where `all_lines`, with the bands by each other in three ways.
/// `go_on` as in first_plans().
std::vector<Plan> banded_plans(const Task& task, const std::vector<std::uint32_t>& free,
                               Pattern pattern, std::size_t bands, bool all_lines,
                               const std::function<bool()>& go_on);

/// Rows for a spine, columns for columns.
Direction direction_of(Pattern pattern);

}  // namespace wallwright::arrange
