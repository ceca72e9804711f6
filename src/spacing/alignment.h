// Which edges and centre lines of neighbours nearly line up.
#pragma once

#include "spacing/layout.h"

#include <span>
#include <vector>

namespace wallwright::spacing {

/// Two bodies whose edges or middles are to lie on one line.
struct Alignment {
    Pair pair;
    Axis axis = Axis::horizontal;  ///< Along which the line is placed: vertical for top edges.
    Line line = Line::centre;
    double off = 0;  ///< mm by which the second's is farther right or up than the first's.
};

/// The line's place on its axis.
double line_at(const WallRect& place, Axis axis, Line line);

/// What neighbours across a gap no wider than `reach` have in line within `within` mm, the nearest
/// first; at equal distance middles before edges. Two bodies that do not move are left out.
std::vector<Alignment> near_alignments(const Layout& layout, std::span<const Facing> neighbours,
                                       double within);

/// Lets the two line up. False when that cannot be; then nothing changes.
bool line_up(Layout& layout, const Alignment& alignment);

}  // namespace wallwright::spacing
