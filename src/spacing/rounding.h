// Numbers that differ by rounding alone are made equal before they decide anything, so that a wall
// shifted or mirrored is treated as it was.
#pragma once

#include <cmath>

namespace wallwright::spacing {

/// A length in mm on steps far finer than anyone measures. Whole and half millimetres, where ties
/// are, lie on a step and not between two.
inline double without_rounding(double mm) {
    constexpr double kSteps = 1 << 20;  // a mm
    return std::floor(mm * kSteps + 0.5) / kSteps;
}

/// A cost in mm2, at most a quarter step above itself.
inline double cost_without_rounding(double cost) {
    constexpr double kSteps = 1 << 10;  // a mm2
    return std::floor(cost * kSteps + 0.25) / kSteps;
}

}  // namespace wallwright::spacing
