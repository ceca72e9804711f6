// The large words of the day: what is to be done now, and its numbers, to be read from the ladder.
#pragma once

#include "app/panels/panels.h"
#include "desk/hang/deed_words.h"

namespace wallwright::app {

/// Fills the area, which scrolls where it is too low for them.
void day_words(Ui& ui, const State& state, const ScreenArea& area);

}  // namespace wallwright::app
