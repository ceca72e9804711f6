// A floor or a ceiling that runs off level, beside the level one of the outline.
#pragma once

#include "draw/board.h"

namespace wallwright::draw {

/// Thin lines where floor and ceiling really run by what was measured at the wall's ends, and how
/// much that is at the right end. Nothing where it is less than half a millimetre.
void add_off_level(Board& board);

}  // namespace wallwright::draw
