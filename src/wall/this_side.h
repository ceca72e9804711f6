// What of a room is on this side of the wall.
#pragma once

#include "wall/room.h"

#include <vector>

namespace wallwright::wall {

/// Its fixtures but those in the room behind, which are in nobody's way here; in the room's order,
/// never null.
std::vector<const Fixture*> fixtures_here(const Room& room);
/// The radiators among them.
std::vector<const Fixture*> radiators_here(const Room& room);

}  // namespace wallwright::wall
