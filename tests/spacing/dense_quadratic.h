// An independent judge of separation problems: dense matrices, solved by Eigen, sharing nothing
// with the solver under test.
#pragma once

#include "spacing/separation.h"

#include <optional>
#include <span>
#include <vector>

namespace wallwright::spacing::test {

/// How far a placement is from the conditions of Karush, Kuhn and Tucker, which hold at the optimum
/// and nowhere else.
struct Optimality {
    double shortfall = 0;   ///< mm by which the worst separation fails.
    double residual = 0;    ///< Of the gradient after the best multipliers, largest entry.
    double least_push = 0;  ///< The smallest multiplier of an inequality; 0 or more at the optimum.
};

/// Multipliers by least squares on the separations that hold exactly. When these depend on each
/// other the multipliers are not unique, and the non-negative ones are searched for (Lawson,
/// Hanson, Solving Least Squares Problems, 1974, chapter 23).
Optimality optimality(std::span<const Variable> variables, std::span<const Separation> separations,
                      const std::vector<double>& at);

/// The optimum by trying every set of separations that may hold exactly: fit for up to a dozen
/// separations. Empty when no placement keeps them all.
std::optional<std::vector<double>> optimum_by_enumeration(std::span<const Variable> variables,
                                                          std::span<const Separation> separations);

}  // namespace wallwright::spacing::test
