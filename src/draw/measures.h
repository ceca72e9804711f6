// The measures outside the wall: how wide and high it is, and where each group is from the datum's
// corner and height.
#pragma once

#include "draw/board.h"

namespace wallwright::draw {

/// Rows of horizontal chains above the wall, columns of upright ones beside it, the wall's own
/// measures outermost. Groups beyond the third column on a side show their height in the list of
/// pieces only.
void add_outer_measures(Board& board);

}  // namespace wallwright::draw
