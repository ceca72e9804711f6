// What the views of the step hang share.
#pragma once

#include "app/panels/panels.h"

#include <string_view>

namespace wallwright::app {

/// Each fills `area`, px of the window.
void pages_view(Ui& ui, State& state, const ScreenArea& area);
void day_view(Ui& ui, State& state, const ScreenArea& area);

/// What the column says beside them.
void pages_panel(Ui& ui, State& state);
void day_panel(Ui& ui, State& state);

/// The pages or the day stand where the wall does else.
bool is_wall_hidden(const State& state);
/// True when the step hang was in another view than the wall, which is shown now.
bool back_to_the_wall(State& state);
/// Keys of these views; true too for every key that would change the wall, which is not in sight:
/// that is said.
bool hang_key(State& state, std::string_view key);

void preview_pages(State& state);
void hang_step_by_step(State& state);

}  // namespace wallwright::app
