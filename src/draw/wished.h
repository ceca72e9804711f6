// Pieces whose frames are not bought yet: an outline in dashes with the size to buy in it.
#pragma once

#include "draw/board.h"
#include "wall/piece.h"

namespace wallwright::draw {

/// The outline alone.
void add_wished(Shapes& shapes, const geometry::Rect<geometry::Wall>& place);

/// Title and size in the middle of every wished piece on the wall, or beside what is there already;
/// the size alone where letters stand for the titles or there is not the room for both.
void add_wished_notes(Board& board);

/// The size in a wished piece that stands on the floor at `place`, over its name.
void add_wished_size(Board& board, const wall::Piece& piece,
                     const geometry::Rect<geometry::Wall>& place);

}  // namespace wallwright::draw
