// Parting pairs where room is scarce: between things that do not move, gaps may have to be narrower
// than wanted.
#pragma once

#include "spacing/sides.h"

#include <optional>
#include <vector>

namespace wallwright::spacing {

/// The gaps of a ring of distances that can be changed so that it closes.
struct Adjustment {
    std::vector<Pair> pairs;
    double gap = 0;  ///< mm that each of them gets.
};

/// How a ring that does not close could: the gaps on its shorter way round grow, all to one size;
/// when there are none, those on its longer way shrink. Empty when that cannot be.
std::optional<Adjustment> adjustment_of(const Layout& layout, const std::vector<RingPart>& ring);

/// Lets pairs of different groups in the ring come as near as pieces of one group. True when there
/// were any.
bool let_groups_meet(Layout& layout, const std::vector<RingPart>& ring);

/// A pair that cannot be parted nearby.
struct Obstruction {
    Pair pair;
    Axis axis = Axis::horizontal;  ///< Along which the pair is nearest to parted.
    std::vector<RingPart> ring;    ///< Why it cannot be parted there; empty when it is only dear.
};

/// Parts the pairs that are too near, each on its cheapest side, the deepest first; what was chosen
/// is appended. Ends early with the first pair that no side parts by moving `far` mm or less, when
/// another side is nearer.
std::optional<Obstruction> part_nearby(Layout& layout, std::vector<Parting>& partings, double far);

struct Parted {
    std::vector<Parting> partings;  ///< In the order of choosing.
    std::vector<Pair> stuck;  ///< No side can part them; the layout lets them be from then on.
};

/// Parts all pairs that are too near. A pair that cannot be parted nearby stays where it is nearest
/// to parted, when the row it stands in fits between what holds it: then the gaps of that row share
/// the room evenly, and the layout allows those narrower distances from then on.
Parted part_or_squeeze(Layout& layout, double far);

}  // namespace wallwright::spacing
