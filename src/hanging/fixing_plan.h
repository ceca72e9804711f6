// Which fixing each of many pieces gets where fixings come in packs: a small integer problem,
// solved to its best.
#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace wallwright::hanging {

/// What there is of one type, and how more of it is sold. Money in any small unit.
struct Supply {
    int have = 0;
    int pack = 1;            ///< At least 1.
    std::int64_t price = 1;  ///< Of a pack; not less than 0.
};

/// One way to hang a piece.
struct Way {
    std::size_t type = 0;  ///< Into the supplies.
    int count = 1;         ///< How many of it the piece takes.
    bool awkward = false;
    std::int64_t rated = 0;  ///< Of all of them together, in any small unit.
};

/// What matters first comes first.
struct PlanCost {
    std::int64_t money = 0;  ///< For packs to buy.
    int awkward = 0;         ///< Pieces hung an awkward way.
    std::int64_t rated = 0;
    auto operator<=>(const PlanCost&) const = default;
};
constexpr PlanCost operator+(const PlanCost& a, const PlanCost& b) {
    return {a.money + b.money, a.awkward + b.awkward, a.rated + b.rated};
}
constexpr PlanCost operator-(const PlanCost& a, const PlanCost& b) {
    return {a.money - b.money, a.awkward - b.awkward, a.rated - b.rated};
}

struct FixingPlan {
    std::vector<std::size_t> ways;  ///< Of each piece, into its ways.
    std::vector<int> packs;         ///< To buy of each type.
    std::vector<int> left;          ///< Of each type once all pieces are hung.
    PlanCost cost;
    bool proved = true;  ///< Nothing costs less; false where the search was cut short.
};

/// Steps of the search after which the best plan found so far is given: a wall of sixty pieces is
/// assessed at every move of the pointer.
inline constexpr int kMostSteps = 2000;

/// The cheapest plan; among equally cheap ones always the same. Every piece has at least one way,
/// and no two of the same type.
///
/// Pieces that compete for the same types are decided together, one by one, those with the fewest
/// ways first (branch and bound). What is still to be decided costs at least its cheapest fixings
/// at their share of a pack, less what those at hand could save of it, rounded up to a whole number
/// of the prices' greatest common measure; it is awkward and rated at least as each piece is by
/// itself, and rated more by what the pieces lose that must give up a type of which there is too
/// little. Two partial plans of the same pieces that leave the same fixings at hand have the same
/// futures, so only the cheaper is followed.
FixingPlan plan_fixings(const std::vector<Supply>& supplies,
                        const std::vector<std::vector<Way>>& pieces, int most_steps = kMostSteps);

}  // namespace wallwright::hanging
