// The figures of the gaps inside a group.
#pragma once

#include "draw/board.h"

#include <string>

namespace wallwright::draw {

/// "gaps 60" where all read the same, else "gaps 55 to 72"; empty for a single piece.
std::string gap_note(const Board& board, const spacing::Group& group);

/// A dimension for each gap that is not too narrow on paper and has room for one: inside the gap,
/// or where its pieces end. Where many gaps read the same only one across and one up are drawn,
/// since the note says the rest.
void add_gap_figures(Board& board, const spacing::Group& group);

}  // namespace wallwright::draw
