// Groups are found from the pieces, never declared: what hangs close together reads as one.
#pragma once

#include "spacing/facing.h"

#include <span>
#include <vector>

namespace wallwright::spacing {

struct Group {
    std::vector<wall::PieceId> pieces;  ///< In the order of the project.
    geometry::Rect<geometry::Wall> bounds;
    std::vector<Gap> gaps;  ///< Gaps between its facing neighbours.
    bool operator==(const Group&) const = default;

    /// Smallest and largest gap in mm; 0 for a single piece.
    [[nodiscard]] double gap_min() const;
    [[nodiscard]] double gap_max() const;
};

/// How far apart two pieces may be and still belong together, for a wanted gap: twice the gap and
/// never under 120 mm.
double group_reach(double wanted_gap);

/// Pieces that face, touch or overlap each other within `reach`, and all that hang together so, are
/// a group. Every piece is in exactly one; groups are ordered left to right.
std::vector<Group> find_groups(std::span<const wall::Placed> pieces, double reach);

}  // namespace wallwright::spacing
