// Which fixtures reach into this wall from either side.
#pragma once

#include "wall/room.h"

namespace wallwright::hanging {

/// True for one on this wall, and for one in the room behind where the wall is thin
/// (hanging/zones.h: kThinWall) or nobody knows how thick it is: what leads to it may run in here.
bool is_in_wall(const wall::Room& room, const wall::Fixture& fixture);

}  // namespace wallwright::hanging
