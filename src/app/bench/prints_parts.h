// The parts of the column beside prints and frames.
#pragma once

#include "app/panels/panels.h"

namespace wallwright::app {

/// Rows of the print that is chosen; nothing without one.
void chosen_print_part(Ui& ui, State& state);
/// Each pair of the match, what is left over, and what one more frame would solve.
void match_list(Ui& ui, State& state);

}  // namespace wallwright::app
