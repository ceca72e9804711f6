// How much of its fixings' rating each piece uses.
#pragma once

#include "draw/board.h"

namespace wallwright::draw {

/// On the lower edge of each piece that is large enough: a bar as long as the whole rating, filled
/// as far as it is in use, with a stroke where the margin ends it, and the share in words.
void add_load_bars(Board& board);

}  // namespace wallwright::draw
