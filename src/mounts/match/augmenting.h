// The cheapest column for every row of a table without forbidden pairs.
#pragma once

#include "mounts/match/assignment.h"

#include <cstddef>
#include <limits>
#include <vector>

namespace wallwright::mounts {

inline constexpr std::size_t kNobody = std::numeric_limits<std::size_t>::max();

/// Every row with a column of its own, and the proof that no other way costs less: no cost is below
/// row_price + column_price, each pair's is equal to it, and the price of a column is 0 where
/// nobody has it and never above.
struct CompletePairs {
    std::vector<std::size_t> column_of;
    std::vector<std::size_t> row_of;  ///< kNobody for a column without a row.
    std::vector<Cost> row_price;
    std::vector<Cost> column_price;

    /// By how much a pair would be dearer than what is settled; never below 0.
    [[nodiscard]] Cost slack(const CostTable& table, std::size_t row, std::size_t column) const {
        return table.at(row, column) - row_price[row] - column_price[column];
    }
};

/// The table has at least as many columns as rows.
CompletePairs cheapest_pairs(const CostTable& table);

}  // namespace wallwright::mounts
