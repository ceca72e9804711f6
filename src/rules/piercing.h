// Which fixings make holes, for the rules that ask what lies behind them.
#pragma once

#include "rules/scene.h"

namespace wallwright::rules {

/// True when the piece is still to go up and one of its fixings goes into the wall.
bool will_pierce(const OnWall& one);

/// Those pieces, in the project's order.
std::vector<const OnWall*> those_that_pierce(const Scene& scene);

}  // namespace wallwright::rules
