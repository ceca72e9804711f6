// The measures on the wall itself: clearance above furniture, gaps, how wide a group is to its
// furniture, the centre line.
#pragma once

#include "draw/board.h"

namespace wallwright::draw {

/// The centre line, and the level line where marks are measured from one; to be drawn behind pieces
/// and furniture.
void add_height_lines(Board& board);

/// All figures on the wall. A gap is labelled where there is room; a group's note says how wide its
/// gaps are in any case.
void add_inner_measures(Board& board);

/// "group 1820 = 0.96 of the sofa, gaps 60": what fits of it, longest first; `furniture` may be
/// empty.
std::vector<std::string> group_notes(const Board& board, const spacing::Group& group,
                                     const wall::Furniture* furniture);

}  // namespace wallwright::draw
