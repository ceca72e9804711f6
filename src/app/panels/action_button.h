// A button in the column for what the file menu does too.
#pragma once

#include "app/actions.h"
#include "app/widgets.h"

namespace wallwright::app {

/// As wide as the column; named for the probe as "action/" and `name`.
void action_button(Ui& ui, State& state, ActionId id, const char* name,
                   ButtonLook look = ButtonLook::plain);

}  // namespace wallwright::app
