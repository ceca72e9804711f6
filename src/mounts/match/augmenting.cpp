#include "mounts/match/augmenting.h"

#include "base/contract.h"

#include <utility>

namespace wallwright::mounts {

namespace {

/// One row's search for the shortest way to a free column, on which every row but the first gives
/// up its column for another.
class Path {
  public:
    Path(const CostTable& table, CompletePairs& pairs, std::size_t start)
        : table_(table),
          pairs_(pairs),
          start_(start),
          length_(table.columns(), kForbidden),
          from_(table.columns(), kNobody),
          reached_(table.columns()) {}

    void take() {
        const std::size_t end = walk();
        reprice(length_[end]);
        hand_over(end);
    }

  private:
    /// Gives the free column at the end.
    std::size_t walk() {
        std::size_t row = start_;
        Cost so_far = 0;
        while (true) {
            look_from(row, so_far);
            const std::size_t column = nearest();
            reached_[column] = true;
            so_far = length_[column];
            row = pairs_.row_of[column];
            if (row == kNobody)
                return column;
        }
    }

    void look_from(std::size_t row, Cost so_far) {
        for (std::size_t column = 0; column < table_.columns(); ++column) {
            if (reached_[column])
                continue;
            const Cost length = so_far + pairs_.slack(table_, row, column);
            if (length < length_[column]) {
                length_[column] = length;
                from_[column] = row;
            }
        }
    }

    /// The column not reached yet that is nearest; of equal ones a free one, which ends the walk.
    [[nodiscard]] std::size_t nearest() const {
        std::size_t best = kNobody;
        for (std::size_t column = 0; column < table_.columns(); ++column) {
            if (reached_[column])
                continue;
            const bool nearer =
                best == kNobody || length_[column] < length_[best] ||
                (length_[column] == length_[best] && pairs_.row_of[column] == kNobody &&
                 pairs_.row_of[best] != kNobody);
            if (nearer)
                best = column;
        }
        return best;
    }

    /// Keeps every slack at 0 or more, and makes it 0 along the way.
    void reprice(Cost whole) {
        pairs_.row_price[start_] += whole;
        for (std::size_t column = 0; column < table_.columns(); ++column) {
            if (!reached_[column])
                continue;
            const Cost change = whole - length_[column];
            pairs_.column_price[column] -= change;
            if (const std::size_t row = pairs_.row_of[column]; row != kNobody)
                pairs_.row_price[row] += change;
        }
    }

    void hand_over(std::size_t column) {
        while (column != kNobody) {
            const std::size_t row = from_[column];
            pairs_.row_of[column] = row;
            column = std::exchange(pairs_.column_of[row], column);
        }
    }

    const CostTable& table_;
    CompletePairs& pairs_;
    std::size_t start_;
    std::vector<Cost> length_;       ///< Of the shortest way to each column known so far.
    std::vector<std::size_t> from_;  ///< The row before it.
    std::vector<bool> reached_;
};

}  // namespace

CompletePairs cheapest_pairs(const CostTable& table) {
    WW_EXPECT(table.rows() <= table.columns(), "every row can have a column");
    CompletePairs pairs{std::vector<std::size_t>(table.rows(), kNobody),
                        std::vector<std::size_t>(table.columns(), kNobody),
                        std::vector<Cost>(table.rows()), std::vector<Cost>(table.columns())};
    for (std::size_t row = 0; row < table.rows(); ++row)
        Path(table, pairs, row).take();
    return pairs;
}

}  // namespace wallwright::mounts
