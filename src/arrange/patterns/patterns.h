// Each pattern's own part: how it lays its rows out and which plans it would begin with. One file a
// pattern.
#pragma once

#include "arrange/pattern.h"

#include <functional>
#include <optional>
#include <vector>

namespace wallwright::arrange {

std::optional<Layout> lay_out_row(const Task& task, const Plan& plan);
std::optional<Layout> lay_out_spine(const Task& task, const Plan& plan);
std::optional<Layout> lay_out_columns(const Task& task, const Plan& plan);
/// Rows of one height each, columns of one width each; the last row may be shorter and is then in
/// the middle.
std::optional<Layout> lay_out_grid(const Task& task, const Plan& plan);

/// Plans of one pattern for the free pieces, the likeliest first. They need not fit on the wall.
/// `go_on` as in first_plans().
std::vector<Plan> row_plans(const Task& task, const std::vector<std::uint32_t>& free,
                            const std::function<bool()>& go_on);
std::vector<Plan> spine_plans(const Task& task, const std::vector<std::uint32_t>& free,
                              const std::function<bool()>& go_on);
std::vector<Plan> columns_plans(const Task& task, const std::vector<std::uint32_t>& free,
                                const std::function<bool()>& go_on);
std::vector<Plan> grid_plans(const Task& task, const std::vector<std::uint32_t>& free);

}  // namespace wallwright::arrange
