// Branch and bound over the sides that pairs part on: the least movement there is, and the proof of
// it.
#pragma once

#include "spacing/sides.h"

#include <cstdint>
#include <vector>

namespace wallwright::spacing {

struct Proof {
    bool better = false;            ///< Something below the limit was found.
    std::vector<Parting> partings;  ///< How the best found parts the pairs.
    double cost = 0;                ///< Of the best found, or the limit.
    double share = 0;  ///< Roughly how much of all there is to look through was looked through.
    bool complete = false;  ///< Nothing is better than `cost`.
};

/// Looks through all ways to part the pairs that are too near in the layout, as it stands, for one
/// that costs less than the limit. A node of the search is a set of sides already chosen; what the
/// two axes cost without the rest is a bound from below. Stops after `work` looks at a variable.
/// The layout is as before.
Proof search_sides(Layout& layout, double cost_limit, std::uint64_t work);

}  // namespace wallwright::spacing
