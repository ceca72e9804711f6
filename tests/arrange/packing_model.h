// The packing problem as a mixed-integer model for GLPK, to hold the search against.
#pragma once

#include "arrange/packing.h"

#include <span>

namespace wallwright::tests {

struct Optimum {
    double cost = 0;  ///< Of the best that GLPK found.
    bool proven = false;
};

/// The least cost of a packing, by branch and cut over which block is left of, right of, below or
/// above which. `goal` without area and shape, which are not linear.
Optimum least_by_glpk(std::span<const arrange::Block> blocks, const arrange::PackingGoal& goal,
                      double seconds);

}  // namespace wallwright::tests
