// How many rows or columns suit the wall.
#pragma once

#include "arrange/patterns/bands.h"

namespace wallwright::arrange {

/// Numbers of bands, `least` or more and of nearly two pieces each at least, whose block should fit
/// on the wall and over the furniture. Those nearest to a good width come first, four at most: two
/// thirds of the wall, or the share of the furniture that the style asks for (two thirds: common
/// practice, no source).
std::vector<std::size_t> likely_counts(const Task& task, const std::vector<std::uint32_t>& items,
                                       Direction direction, std::size_t least);

}  // namespace wallwright::arrange
