#include "mounts/match/assignment.h"

#include "base/contract.h"
#include "mounts/match/augmenting.h"
#include "mounts/match/first_of_equals.h"

#include <algorithm>
#include <cmath>

namespace wallwright::mounts {

namespace {

/// The smallest and the largest cost that is not forbidden; 0 where all are.
struct Span {
    Cost least = 0;
    Cost most = 0;
};

Span span_of(const CostTable& table) {
    std::optional<Span> span;
    for (std::size_t row = 0; row < table.rows(); ++row)
        for (std::size_t column = 0; column < table.columns(); ++column)
            if (const Cost cost = table.at(row, column); cost != kForbidden)
                span = span ? Span{std::min(span->least, cost), std::max(span->most, cost)}
                            : Span{cost, cost};
    return span.value_or(Span{});
}

void check_size(const CostTable& table, const Span& span) {
    constexpr double kMost = 1e17;
    const double spread = static_cast<double>(span.most) - static_cast<double>(span.least);
    const double larger = static_cast<double>(std::max(table.rows(), table.columns()));
    WW_EXPECT(spread * static_cast<double>(table.rows()) * larger < kMost &&
                  std::max(std::abs(static_cast<double>(span.least)),
                           std::abs(static_cast<double>(span.most))) *
                          larger <
                      kMost,
              "the costs of an assignment can be added up");
}

/// Every row with a column: a forbidden pair costs more than all others could save, and stands for
/// a row that is left over. There are at least as many columns as rows.
CostTable made_whole(const CostTable& table, std::optional<std::size_t> row_first) {
    const Span span = span_of(table);
    check_size(table, span);
    const Cost gain =
        static_cast<Cost>(std::min(table.rows(), table.columns())) * (span.most - span.least) + 1;
    CostTable whole(table.rows(), std::max(table.rows(), table.columns()));
    for (std::size_t row = 0; row < whole.rows(); ++row) {
        const Cost left_over = span.most + (row == row_first ? 2 : 1) * gain;
        for (std::size_t column = 0; column < whole.columns(); ++column) {
            const Cost cost = column < table.columns() ? table.at(row, column) : kForbidden;
            whole.at(row, column) = cost == kForbidden ? left_over : cost;
        }
    }
    return whole;
}

}  // namespace

Assignment least_cost(const CostTable& table, std::optional<std::size_t> row_first) {
    const CostTable whole = made_whole(table, row_first);
    CompletePairs pairs = cheapest_pairs(whole);
    take_first_of_equals(table, whole, pairs);

    Assignment result;
    std::vector<bool> taken(table.columns());
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const std::size_t column = pairs.column_of[row];
        if (column >= table.columns() || table.at(row, column) == kForbidden) {
            result.column_of.emplace_back();
            result.left_rows.push_back(row);
            continue;
        }
        result.column_of.emplace_back(column);
        result.cost += table.at(row, column);
        taken[column] = true;
    }
    for (std::size_t column = 0; column < table.columns(); ++column)
        if (!taken[column])
            result.left_columns.push_back(column);
    return result;
}

void lock(CostTable& table, std::size_t row, std::size_t column) {
    WW_EXPECT(table.at(row, column) != kForbidden, "a locked pair is allowed");
    for (std::size_t other = 0; other < table.columns(); ++other)
        if (other != column)
            table.at(row, other) = kForbidden;
    for (std::size_t other = 0; other < table.rows(); ++other)
        if (other != row)
            table.at(other, column) = kForbidden;
}

}  // namespace wallwright::mounts
