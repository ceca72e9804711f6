// What stands behind the pieces: wall, floor, skirting, cable zones, furniture and fixtures.
#pragma once

#include "draw/board.h"

#include <vector>

namespace wallwright::draw {

/// The wall's colour, its outline, skirting and picture rail and, where asked, the cable zones and
/// what is inside the wall.
void add_wall(Board& board);
/// The floor as a section through it, from under the wall to `right` and down to `bottom`, mm.
struct FloorReach {
    double right = 0;
    double bottom = 0;
};
void add_floor(Board& board, const FloorReach& reach);
/// Fixtures, then the furniture before them.
void add_furnishings(Board& board);

/// The lower edge of the outline from left to right: level, or up a stair.
std::vector<geometry::Point<geometry::Wall>> floor_line(const geometry::Polygon& outline);
/// The part of the rectangle that is on the wall, as a polygon; empty when none is.
std::vector<geometry::Point<geometry::Wall>> part_on_wall(
    const geometry::Polygon& outline, const geometry::Rect<geometry::Wall>& rect);

}  // namespace wallwright::draw
