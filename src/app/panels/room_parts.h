// What the room's panel says of the wall itself.
#pragma once

#include "app/ui.h"
#include "desk/session.h"

namespace wallwright::app {

/// Surface, colour, skirting, use and cables; what is behind the surface; and the conditions that
/// change what is allowed. The last two are folded where nothing is said of them, with what is said
/// in a line below when they are.
void wall_part(Ui& ui, desk::Session& session);

}  // namespace wallwright::app
