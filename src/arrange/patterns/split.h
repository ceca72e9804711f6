// Which piece goes into which band, so that the bands come out equally long.
#pragma once

#include "arrange/patterns/bands.h"

#include <span>
#include <vector>

namespace wallwright::arrange {

/// What counts besides equal lengths. A weight of 1 makes up for a band that is twice as long as
/// the others.
struct SplitTaste {
    double alike = 0.1;      ///< Pieces of one thickness together.
    double flush = 0.3;      ///< Both edges of the bands between the outer ones flush.
    double large_first = 0;  ///< Large pieces in the first bands; negative for the last.
};

/// Bands of at least one piece each, found by moving and swapping pieces from several starts until
/// no such step is better. As many pieces as bands or more; O(n2) a round.
std::vector<std::vector<std::uint32_t>> split_into(const Task& task,
                                                   const std::vector<std::uint32_t>& items,
                                                   std::size_t bands, Direction direction,
                                                   const SplitTaste& taste);

}  // namespace wallwright::arrange
