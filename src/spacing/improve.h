// From a first parting of all pairs to a better one, and to the best when it can be proved.
#pragma once

#include "spacing/prove.h"

#include <cstdint>
#include <vector>

namespace wallwright::spacing {

/// A way to part all pairs of a layout.
struct Solution {
    std::vector<Parting> partings;
    double cost = 0;            ///< mm2
    bool least_proved = false;  ///< No other way costs less.
};

/// Works on `start`, which parts all pairs of the layout, until nothing is left to try or `work`
/// looks at a variable are spent. First a short try to prove it, then a large neighbourhood search
/// (a few pieces at a time are freed and parted anew by branch and bound), then branch and bound on
/// the whole. The layout is as before. The same input gives the same solution.
Solution improve(Layout& layout, Solution start, std::uint64_t work);

}  // namespace wallwright::spacing
