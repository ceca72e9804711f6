// What keys and buttons do with the layouts to choose from.
#pragma once

#include "app/state.h"

#include <string_view>

namespace wallwright::app {

/// Begins to look for layouts, in the step arrange. What hinders it is told as a notice.
void try_layouts(State& state);
/// Shows the next (1) or the one before (-1).
void show_next_layout(State& state, int step);
/// Takes the one that is shown.
void take_layout(State& state);
/// The wall is shown as it is.
void put_layout_away(State& state);

/// While a layout is shown: arrows for another one, Enter to take it. True when it meant that.
bool press_layout_key(State& state, std::string_view key);

/// Once a frame, before anything reads the layouts.
void keep_layouts(State& state);

}  // namespace wallwright::app
