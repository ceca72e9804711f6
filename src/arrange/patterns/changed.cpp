#include "arrange/pattern.h"
#include "base/contract.h"

#include <algorithm>
#include <utility>

namespace wallwright::arrange {

namespace {

struct Slot {
    std::size_t row = 0;
    std::size_t at = 0;
};

std::size_t pieces_in(const Plan& plan) {
    std::size_t count = 0;
    for (const auto& row : plan.rows)
        count += row.size();
    return count;
}

Slot any_slot(const Plan& plan, Random& random) {
    std::size_t left = random.below(pieces_in(plan));
    std::size_t row = 0;
    while (left >= plan.rows[row].size())
        left -= plan.rows[row++].size();
    return {row, left};
}

void change_line(Plan& plan, Random& random) {
    const auto other = (static_cast<std::uint64_t>(plan.line) + 1 + random.below(2)) % 3;
    plan.line = static_cast<RowLine>(other);
}

void swap_two(Plan& plan, Random& random) {
    const Slot one = any_slot(plan, random);
    const Slot other = any_slot(plan, random);
    std::swap(plan.rows[one.row][one.at], plan.rows[other.row][other.at]);
}

void move_one(Plan& plan, Random& random) {
    const Slot from = any_slot(plan, random);
    std::vector<std::uint32_t>& row = plan.rows[from.row];
    // A row's last piece stays in it.
    const std::size_t to_row = row.size() == 1 ? from.row : random.below(plan.rows.size());
    const std::uint32_t piece = row[from.at];
    row.erase(row.begin() + static_cast<std::ptrdiff_t>(from.at));
    std::vector<std::uint32_t>& target = plan.rows[to_row];
    const auto at = static_cast<std::ptrdiff_t>(random.below(target.size() + 1));
    target.insert(target.begin() + at, piece);
}

void reverse_one(Plan& plan, Random& random) {
    std::ranges::reverse(plan.rows[random.below(plan.rows.size())]);
}

void change_once(Plan& plan, Random& random) {
    const bool grid = plan.pattern == Pattern::grid;
    const std::uint64_t choice = random.below(20);
    if (choice < 10 || (grid && choice < 18))
        swap_two(plan, random);
    else if (choice < 16 && !grid)
        move_one(plan, random);
    else if (choice < 18 || grid)
        reverse_one(plan, random);
    else
        change_line(plan, random);
}

}  // namespace

Plan changed(const Plan& plan, Random& random) {
    WW_EXPECT(pieces_in(plan) > 0, "a plan has pieces");
    constexpr int kTriesMost = 20;
    Plan result = plan;
    for (int i = 0; i < kTriesMost && result == plan; ++i)
        change_once(result, random);
    return result;
}

}  // namespace wallwright::arrange
