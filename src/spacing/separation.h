// Variables on a line, kept apart: the quadratic problem at the heart of even gaps.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace wallwright::spacing {

/// A place on one axis that would like to be at `wanted`, the more so the larger its weight (more
/// than 0).
struct Variable {
    double wanted = 0;
    double weight = 1;
};

/// right - left >= gap, or == gap. Indices into the variables.
struct Separation {
    std::size_t left = 0;
    std::size_t right = 0;
    double gap = 0;
    bool equality = false;
};

struct Placement {
    std::vector<double> at;  ///< One a variable.
    double cost = 0;         ///< Sum of weight * (at - wanted)^2.
    std::vector<std::size_t>
        unsatisfiable;  ///< Separations left out because the others forbid them, by index.
    std::vector<std::size_t>
        active;  ///< Separations that hold exactly and push or pull (a multiplier not 0), by index.
};

/// The placement of least cost that keeps every separation. Separations that cannot hold together
/// with those before them are left out and named. Exact up to rounding: the result satisfies the
/// optimality conditions (active-set method on blocks of variables tied by active separations,
/// after Dwyer, Marriott, Stuckey, Fast Node Overlap Removal, GD 2005, with the correction in its
/// addendum of 2006).
Placement separate(std::span<const Variable> variables, std::span<const Separation> separations);

}  // namespace wallwright::spacing
