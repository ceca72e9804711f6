// Which side a pair parts on: the one whose re-solve is cheapest.
#pragma once

#include "spacing/layout.h"

#include <array>
#include <optional>
#include <vector>

namespace wallwright::spacing {

/// A pair and the side it was parted on.
struct Parting {
    Pair pair;
    Side side = Side::left;
};

/// One side tried, and what the layout would cost with the pair parted there.
struct Trial {
    Side side = Side::left;
    double cost = 0;  ///< mm2
};

/// The sides a pair may be parted on for less than some limit.
struct Choices {
    Pair pair;
    std::array<Trial, kSides.size()> sides;  ///< The first `count` are there, cheapest first.
    std::size_t count = 0;
};

/// Tries every side of a pair and takes each back.
Choices try_sides(Layout& layout, Pair pair, double cost_limit);
/// As the first of try_sides(), and quicker; empty when no side can part the pair.
std::optional<Trial> cheapest_side(Layout& layout, Pair pair);

/// Brings the deepest `count` conflicts to the front, deepest first, and drops the rest.
void keep_deepest(std::vector<Conflict>& conflicts, std::size_t count);

/// Parts the pairs that are too near, each on its cheapest side: of the deepest few the pair first
/// whose second side is dearest. Slower than the deepest first, and often
/// better. Empty, with the layout as before, when a pair cannot be parted or `work` looks at a
/// variable do not suffice.
std::optional<std::vector<Parting>> part_hardest_first(Layout& layout, std::uint64_t work);

}  // namespace wallwright::spacing
