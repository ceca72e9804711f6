// The patterns that pictures are hung in: rows of pieces, and how each pattern lays them out.
#pragma once

#include "arrange/task.h"
#include "base/random.h"

#include <cstdint>
#include <functional>
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

/// Of a single row, on what its pieces lie: lower edges, middles, upper edges; of a single column
/// left edges, middles, right edges. Of several rows of a spine, how they lie by each other: flush
/// left, on one middle, flush right; of several columns flush at the bottom, on one middle, at the
/// top. A grid has no use for it.
enum class RowLine { low, centre, high };

/// A layout as a person would tell it: which pieces, in which order, in which row.
struct Plan {
    Pattern pattern = Pattern::row;
    RowLine line = RowLine::centre;
    /// Free items. Rows from top to bottom, each from left to right; columns from left to right,
    /// each from top to bottom. None is empty.
    std::vector<std::vector<std::uint32_t>> rows;
    bool climbs = false;  ///< With the stair, where the wall has one: a single row, or columns.
    bool operator==(const Plan&) const = default;
};

/// The plan's block, its lower left corner at the origin. Pieces of one row are the gap apart, and
/// nothing is nearer than that. So are all that face each other across rows where the facing edges
/// are flush: always for a single row, for two about a spine, and for more where those between the
/// outer ones are of one height each. Nothing when the pattern cannot take these rows (a grid of
/// unlike sizes; the salon has none).
std::optional<Layout> lay_out(const Task& task, const Plan& plan);

/// How many facing neighbours of a block are not the gap apart.
std::size_t uneven_gaps(const Task& task, const Layout& block);

/// First plans, good at once: every pattern but the salon, in several ways (how many rows, on which
/// line), with the pieces in an order that is symmetric about the middle, large ones inside. Plans
/// that cannot be laid out or settled are not among them, nor those that only have room far from
/// where another of the pattern hangs. No two of a pattern look much the same, and those with
/// uneven gaps are few, the least uneven ones.
std::vector<Plan> first_plans(const Task& task);
/// Those of one pattern; none of the salon. For hundreds of pieces that takes a while: `go_on` is
/// asked every few milliseconds then, and once it gives false only what there is counts.
std::vector<Plan> first_plans(
    const Task& task, Pattern pattern, const std::function<bool()>& go_on = [] { return true; });

/// A plan near by: two pieces swapped, one moved to another place or row, a row reversed, another
/// line. Of a grid, which has its places, only swapped and reversed. The same only when the plan
/// has a single piece and line to choose from.
Plan changed(const Plan& plan, Random& random);

}  // namespace wallwright::arrange
