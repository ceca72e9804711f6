// What the frames hide, in dashed lines, and the pencil marks with their numbers.
#pragma once

#include "draw/board.h"

namespace wallwright::draw {

/// Strips, hooks and cords hidden by every piece on the wall (hidden_lines.h).
void add_hidden_fixings(Board& board);
/// What is seen of a piece's way down from a rail; other pieces hang before it, so this comes
/// first.
void add_from_rail(Board& board);
/// A cross at each mark, with the number that the table of marks gives it.
void add_marks(Board& board);
/// The edges of a piece that hangs already, where marks are measured from them.
void add_datum_edges(Board& board);
/// Each piece's letter in a ring on its middle: filled for a planned piece, open for one that
/// hangs.
void add_letters(Board& board);
/// A letter in a ring.
void add_ringed(Board& board, geometry::Point<geometry::Wall> at, const std::string& letter,
                bool filled);

}  // namespace wallwright::draw
