// The search for the cheapest way to hang pieces that compete for the same fixings.
#pragma once

#include "hanging/fixing_plan.h"

namespace wallwright::hanging {

/// Branch and bound, as fixing_plan.h says, on pieces of which each has a way; at least one piece.
struct Found {
    std::vector<std::size_t> ways;  ///< Of each piece.
    PlanCost cost;
    bool proved = true;
};

/// `steps_left` is what the search may take, and is lowered by what it took.
Found cheapest(const std::vector<Supply>& supplies, const std::vector<std::vector<Way>>& pieces,
               int& steps_left);

}  // namespace wallwright::hanging
