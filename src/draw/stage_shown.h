// What a stage of growth adds, made to stand out.
#pragma once

#include "draw/board.h"

namespace wallwright::draw {

/// A light outline around each piece that goes up in the stage shown, on the wall behind the
/// frames. Nothing where no stage is shown, as for add_stage_label.
void add_stage_outlines(Board& board);

/// "stage 2 of 3", where there is room from the wall's upper left corner on.
void add_stage_label(Board& board);

}  // namespace wallwright::draw
