// A fair plan to begin the search for the cheapest with.
#pragma once

#include "hanging/fixing_plan.h"

namespace wallwright::hanging {

/// A way for every piece, and what they cost together.
struct Start {
    std::vector<std::size_t> ways;
    PlanCost cost;
};

/// The best of: each type wherever it goes and else whatever costs least at once, in the given
/// order, and what comes of it by changing one piece after another while that helps.
Start fair_plan(const std::vector<Supply>& supplies, const std::vector<std::vector<Way>>& pieces);

}  // namespace wallwright::hanging
