// The patterns that pictures are hung in: rows of pieces, and how each pattern lays them out.
#pragma once

#include "arrange/task.h"
#include "base/random.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace wallwright::arrange {

/// row: one above the other, each on a common line; spine: rows hung above and below one level gap;
/// columns: the same upright; grid: rows and columns at once, for pieces of one size (or few);
/// salon: free, piece against piece.
enum class Pattern { row, spine, columns, grid, salon };

}  // namespace wallwright::arrange

template <>
struct wallwright::wall::Names<wallwright::arrange::Pattern> {
    static constexpr std::string_view values[] = {"row", "spine", "columns", "grid", "salon"};
};

namespace wallwright::arrange {

/// On what the pieces of one row lie: for columns left, middle and right.
enum class RowLine { low, centre, high };

/// A layout as a person would tell it: which pieces, in which order, in which row.
struct Plan {
    Pattern pattern = Pattern::row;
    RowLine line = RowLine::centre;
    std::vector<std::vector<std::uint32_t>> rows;  ///< Free items; left to right, top to bottom.
    bool operator==(const Plan&) const = default;
};

/// The plan's block at its exact gaps, its lower left corner at the origin; nothing when the
/// pattern cannot take these rows (a grid of unlike sizes).
std::optional<Layout> lay_out(const Task& task, const Plan& plan);

/// First plans, good at once: every pattern but the salon, in several ways (how many rows, on which
/// line), with the pieces in an order that is symmetric about the middle, large ones inside. Plans
/// that cannot be laid out or settled are not among them.
std::vector<Plan> first_plans(const Task& task);

/// A plan near by: two pieces swapped, one moved to another place or row, a row reversed.
Plan changed(const Plan& plan, Random& random);

}  // namespace wallwright::arrange
