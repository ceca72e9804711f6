// Which row of a table goes with which column, so that the pairs cost least in all.
#pragma once

#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <vector>

namespace wallwright::mounts {

using Cost = std::int64_t;

/// The cost of a pair that must not be.
inline constexpr Cost kForbidden = std::numeric_limits<Cost>::max();

/// What each pair of a row and a column costs; negative costs are allowed.
class CostTable {
  public:
    CostTable(std::size_t rows, std::size_t columns, Cost everywhere = kForbidden)
        : rows_(rows), columns_(columns), cells_(rows * columns, everywhere) {}

    [[nodiscard]] std::size_t rows() const { return rows_; }
    [[nodiscard]] std::size_t columns() const { return columns_; }
    Cost& at(std::size_t row, std::size_t column) { return cells_[row * columns_ + column]; }
    [[nodiscard]] Cost at(std::size_t row, std::size_t column) const {
        return cells_[row * columns_ + column];
    }

  private:
    std::size_t rows_;
    std::size_t columns_;
    std::vector<Cost> cells_;
};

struct Assignment {
    std::vector<std::optional<std::size_t>> column_of;  ///< One for each row.
    std::vector<std::size_t> left_rows;                 ///< Without a column, in order.
    std::vector<std::size_t> left_columns;
    Cost cost = 0;  ///< Of all pairs.
    bool operator==(const Assignment&) const = default;
};

/// As many pairs as can be, none of them forbidden; among those the least cost; among those the
/// first row in the first column it can have, then the second row, and so on, so that equal costs
/// do not make the answer wander. `row_first` is left over only where every column is forbidden to
/// it; that never makes fewer pairs.
///
/// Shortest augmenting paths with potentials: Jonker and Volgenant, Computing 38 (1987), and for
/// rectangles Crouse, IEEE Transactions on Aerospace and Electronic Systems 52 (2016). Takes time
/// with the cube of the larger side. The spread of the costs, times rows, times the larger side,
/// must be below 1e17.
Assignment least_cost(const CostTable& table, std::optional<std::size_t> row_first = {});

/// Forbids all other pairs of this row and this column, so that these two go together. The pair
/// must not be forbidden itself.
void lock(CostTable& table, std::size_t row, std::size_t column);

}  // namespace wallwright::mounts
