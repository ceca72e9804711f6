// How a piece hangs, as lines: what its frame hides, and what is seen of a cord from a rail.
#pragma once

#include "draw/drawing.h"
#include "hanging/fixings.h"

#include <vector>

namespace wallwright::draw {

/// Where the piece rests: the fixing's point, or under a rail hook the lower end of its cord.
geometry::Point<geometry::Wall> bearing_point(const hanging::Fixing& fixing);

struct FixingLines {
    std::vector<Path<geometry::Wall>> hidden;  ///< Dashed: ISO 128-2, 02.1.
    std::vector<Path<geometry::Wall>> seen;    ///< Rail hooks and their cords above the frame.
};

/// Strips, plates of hooks, heads of screws, keyholes, the cord from ring to ring; nothing for a
/// piece without a place.
FixingLines fixing_lines_of(const wall::Project& project, const hanging::Hanging& hanging);

}  // namespace wallwright::draw
