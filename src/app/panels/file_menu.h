// The menu of the button "File".
#pragma once

#include "app/state.h"
#include "app/ui.h"

namespace wallwright::app {

/// Drops it down.
void open_file_menu();
/// Shows it while it is open, under the bar from `left` px on; in the same window as
/// open_file_menu.
void file_menu(Ui& ui, State& state, float left);

}  // namespace wallwright::app
