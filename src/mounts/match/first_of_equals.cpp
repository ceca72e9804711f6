#include "mounts/match/first_of_equals.h"

#include <utility>

namespace wallwright::mounts {

namespace {

/// All cheapest ways use pairs without slack, and any two of them differ by rings of rows that pass
/// their columns on. In such a ring, nobody counts as one who has the columns that are empty and
/// may take any of price 0. So a row can have a column when a chain leads from there back to the
/// row's own.
class Turns {
  public:
    Turns(const CostTable& table, const CostTable& whole, CompletePairs& pairs)
        : table_(table), whole_(whole), pairs_(pairs) {}

    void settle(std::size_t row) {
        look_back(row);
        for (std::size_t column = 0; column < table_.columns(); ++column)
            if (is_allowed(row, column) && reached_[column] &&
                pairs_.slack(whole_, row, column) == 0) {
                pass_on(row, column);
                return;
            }
    }

  private:
    [[nodiscard]] bool is_allowed(std::size_t row, std::size_t column) const {
        return column < table_.columns() && table_.at(row, column) != kForbidden;
    }

    /// An earlier row keeps its column; one that is left over may be so with another.
    [[nodiscard]] bool may_move(std::size_t row, std::size_t to, std::size_t turn) const {
        if (row == turn || pairs_.slack(whole_, row, to) != 0)
            return false;
        return row > turn || (!is_allowed(row, pairs_.column_of[row]) && !is_allowed(row, to));
    }

    void reach(std::size_t column) {
        reached_[column] = true;
        open_.push_back(column);
    }

    /// Marks the columns from which a chain leads to the one that the row of this turn has.
    void look_back(std::size_t turn) {
        reached_.assign(whole_.columns(), false);
        next_.assign(whole_.rows(), kNobody);
        emptied_ = kNobody;
        reach(pairs_.column_of[turn]);
        while (!open_.empty()) {
            const std::size_t to = open_.back();
            open_.pop_back();
            for (std::size_t row = 0; row < whole_.rows(); ++row)
                if (!reached_[pairs_.column_of[row]] && may_move(row, to, turn)) {
                    next_[row] = to;
                    reach(pairs_.column_of[row]);
                }
            if (emptied_ == kNobody && pairs_.column_price[to] == 0)
                empty(to);
        }
    }

    /// This column may be given up for one that is empty.
    void empty(std::size_t to) {
        emptied_ = to;
        for (std::size_t column = 0; column < whole_.columns(); ++column)
            if (pairs_.row_of[column] == kNobody)
                reach(column);
    }

    /// The row takes the column, whoever had it takes the next of the chain, and so on.
    void pass_on(std::size_t row, std::size_t column) {
        const std::size_t own = pairs_.column_of[row];
        while (true) {
            const std::size_t before = std::exchange(pairs_.row_of[column], row);
            if (row != kNobody)
                pairs_.column_of[row] = column;
            if (column == own)
                return;
            row = before;
            column = row == kNobody ? emptied_ : next_[row];
        }
    }

    const CostTable& table_;
    const CostTable& whole_;
    CompletePairs& pairs_;
    std::vector<bool> reached_;
    std::vector<std::size_t> open_;  ///< Reached, and not looked back from yet.
    std::vector<std::size_t> next_;  ///< Where a row moves to when its column is wanted.
    std::size_t emptied_ = kNobody;  ///< Which is given up when an empty one is wanted.
};

}  // namespace

void take_first_of_equals(const CostTable& table, const CostTable& whole, CompletePairs& pairs) {
    Turns turns(table, whole, pairs);
    for (std::size_t row = 0; row < whole.rows(); ++row)
        turns.settle(row);
}

}  // namespace wallwright::mounts
