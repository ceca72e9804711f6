// A quick first guess of which separations will hold exactly, to start the exact solver from.
#pragma once

#include "spacing/separation.h"

#include <cstdint>
#include <vector>

namespace wallwright::spacing {

/// Separations, by index, that tie the variables into blocks without a cycle. Blocks are merged
/// over each separation that their balanced places break, from left to right, and never split: the
/// first half of the method of Dwyer, Marriott, Stuckey, Fast Node Overlap Removal (GD 2005). At
/// most one variable may have an infinite weight; it stays where it is wanted.
std::vector<std::uint32_t> first_ties(std::span<const Variable> variables,
                                      std::span<const Separation> separations);

}  // namespace wallwright::spacing
