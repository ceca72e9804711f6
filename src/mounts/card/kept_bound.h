// The least number of sheets while some blanks stay where they are.
#pragma once

#include "mounts/card/around_kept.h"

namespace wallwright::mounts {

/// No plan that leaves the kept blanks where they are has fewer sheets: their own, and those that
/// what fits nowhere beside them needs by the bounds of nest/bounds.h.
std::size_t kept_bound(const NestTask& task, const std::vector<KeptSheet>& kept,
                       const RestOfTask& rest);

/// Rectangles of `whole` that hold nothing of `kept`; any other such rectangle lies in one of them.
std::vector<OnSheet> empty_parts(const OnSheet& whole, std::span<const PlacedBlank> kept);

}  // namespace wallwright::mounts
