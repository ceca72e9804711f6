// What is inside the wall, behind it and along it: studs, what the room behind has there, the
// picture rail.
#pragma once

#include "draw/board.h"

namespace wallwright::draw {

/// Both edges of each stud as hidden lines and its centre line, from floor to ceiling.
void add_studs(Board& board);
/// Fixtures of the room behind as dotted outlines.
void add_other_side(Board& board);
/// The moulding whose upper edge takes the hooks, as far as the wall reaches at its height.
void add_rail(Board& board);
/// What they are, once each, where there is room; only of what the options show.
void add_names_inside(Board& board);

}  // namespace wallwright::draw
