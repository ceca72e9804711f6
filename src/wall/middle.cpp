#include "wall/middle.h"

#include <vector>

namespace wallwright::wall {

double middle_above_floor(const Project& project, std::span<const PieceId> pieces) {
    std::vector<Rect<Wall>> places;
    for (const PieceId& id : pieces)
        if (const Piece* piece = find(project, id))
            if (const auto place = place_of(project, *piece))
                places.push_back(*place);
    return geometry::middle_above(geometry::FloorLine(project.room.outline), places);
}

}  // namespace wallwright::wall
