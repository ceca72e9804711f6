// Blanks on card by straight cuts from edge to edge.
#pragma once

#include "mounts/nest/plan.h"

#include <functional>

namespace wallwright::mounts {

/// The best plan found: fewest sheets bought, then fewest sheets, then least waste, then the lowest
/// price, then the largest single offcut. Greedy rules first, then ruin and recreate of trees of
/// cuts (Gardeyn, Wauters, A goal-driven ruin and recreate heuristic for the 2D variable-sized bin
/// packing problem with guillotine constraints, EJOR 301, 2022; from memory). `go_on` is asked
/// every few milliseconds and once more at the least; false ends it with what there is.
NestPlan nest(const NestTask& task, const NestOptions& options, const std::function<bool()>& go_on);

}  // namespace wallwright::mounts
