// How a value falls with what is measured.
#pragma once

#include <algorithm>

namespace wallwright::arrange {

inline constexpr double kExact = 1;  ///< mm; nearer than this a tape sees no difference.

/// By how much `off` mm is more than a tape would overlook.
constexpr double seen_off(double off) {
    return std::max(0.0, off - kExact);
}
/// 1 at 0, straight down to 0 at `zero_at`.
constexpr double falling(double off, double zero_at) {
    return std::clamp(1 - off / zero_at, 0.0, 1.0);
}

}  // namespace wallwright::arrange
