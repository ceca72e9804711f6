// The parts of the step hang's panel.
#pragma once

#include "app/state.h"
#include "app/ui.h"

namespace wallwright::app {

/// What is drawn on the wall, each with a switch of its own.
void layers_part(Ui& ui, State& state);
/// What marks are measured from, a floor or a ceiling that is off level, and what they are measured
/// with.
void datum_part(Ui& ui, desk::Session& session);
/// Each piece with a bar of the load in use; a click selects it.
void loads_part(Ui& ui, desk::Session& session);
/// What is to be at hand and what of it is in the drawer, what there is to buy, packs and prices.
void needs_part(Ui& ui, desk::Session& session);

}  // namespace wallwright::app
