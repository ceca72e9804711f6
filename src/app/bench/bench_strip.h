// The pieces that lie beside the bench, small, to go from one to another.
#pragma once

#include "app/panels/panels.h"

namespace wallwright::app {

/// px that the strip takes at the foot of the bench; none where the mount needs all the height.
float bench_strip_height(const Ui& ui, const State& state, const ScreenArea& bench);
/// All pieces in a row, the one that is looked at marked. A click looks at another.
void bench_strip(Ui& ui, State& state, const ScreenArea& area);
/// All pieces larger and at one scale, over all of the area: where none is looked at.
void bench_overview(Ui& ui, State& state, const ScreenArea& area);

}  // namespace wallwright::app
