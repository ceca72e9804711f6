// A sheet cut about blanks that stay where they are.
#pragma once

#include "mounts/nest/plan.h"

#include <optional>
#include <span>

namespace wallwright::mounts {

struct CutAbout {
    std::vector<SheetCut> cuts;  ///< Not numbered.
    std::vector<OnSheet> free;   ///< What is left beside the blanks, in no order.
};

/// Straight cuts from edge to edge that bring each of `kept` out of `whole` as it lies there, such
/// that the sum of the squares of what is left is the largest; nothing where no cuts do. None of
/// them overlap or leave `whole`. Exact, over all sub-rectangles bounded by edges of theirs.
std::optional<CutAbout> cut_about(const OnSheet& whole, std::span<const OnSheet> kept);

/// By more than rounding.
bool overlap(const OnSheet& one, const OnSheet& other);
bool lies_in(const OnSheet& inner, const OnSheet& outer);

}  // namespace wallwright::mounts
