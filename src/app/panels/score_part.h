// Why the arrangement stands where it does, measure by measure.
#pragma once

#include "app/state.h"
#include "app/ui.h"

namespace wallwright::app {

/// A section: of each measure its value as a bar, what a tape would find, and how much it counts,
/// to be dragged. Of what is shown on the wall, a layout under the pointer too. Nothing for an
/// empty wall.
void score_part(Ui& ui, State& state);

}  // namespace wallwright::app
