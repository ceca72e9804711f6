// A button in the column for what the file menu does too.
#pragma once

#include "app/actions.h"
#include "app/widgets.h"

namespace wallwright::app {

/// As wide as the column; named for the probe as "action/" and `name`. `hindrance` is why it cannot
/// be done now; empty when it can.
void action_button(Ui& ui, State& state, ActionId id, const char* name,
                   ButtonLook look = ButtonLook::plain, const std::string& hindrance = "");

}  // namespace wallwright::app
