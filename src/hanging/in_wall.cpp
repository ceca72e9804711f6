#include "hanging/in_wall.h"

#include "hanging/zones.h"

namespace wallwright::hanging {

bool is_in_wall(const wall::Room& room, const wall::Fixture& fixture) {
    return !fixture.other_side || !room.thickness || *room.thickness <= kThinWall;
}

}  // namespace wallwright::hanging
