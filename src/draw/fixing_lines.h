// What the frames hide, in dashed lines, and the pencil marks with their numbers.
#pragma once

#include "draw/board.h"

namespace wallwright::draw {

/// Strips, hooks and cords of every piece on the wall.
void add_hidden_fixings(Board& board);
/// A cross at each mark, with the number that the table of marks gives it.
void add_marks(Board& board);
/// Each piece's letter in a ring on its middle: filled for a planned piece, open for one that
/// hangs.
void add_letters(Board& board);
/// A letter in a ring.
void add_ringed(Board& board, geometry::Point<geometry::Wall> at, const std::string& letter,
                bool filled);

}  // namespace wallwright::draw
