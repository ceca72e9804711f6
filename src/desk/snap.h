// Where a dragged rectangle wants to rest: at the wanted gap from its neighbours, in line with
// their edges and centres, on the centre line, over the middle of the furniture.
#pragma once

#include "geometry/polygon.h"
#include "wall/project.h"

#include <string>
#include <vector>

namespace wallwright::desk {

enum class SnapKind { gap, edges, centres, room };

/// Why a snap holds along one axis, and the line that shows it.
struct Guide {
    geometry::Segment<geometry::Wall> line;
    std::string words;  ///< "gap 60", "top edges", "centre line"; lengths in the project's unit.
    SnapKind kind = SnapKind::edges;
};

struct Snapped {
    geometry::Vec<geometry::Wall> by;  ///< To be added to the rectangle's place.
    bool holds_x = false;              ///< A snap holds along x, though it may move nothing.
    bool holds_y = false;
    std::vector<Guide> guides;  ///< One for each axis that a snap holds.
};

struct SnapWish {
    geometry::Rect<geometry::Wall> place;  ///< Where the pointer has dragged it, without any snap.
    std::vector<wall::PieceId> moving;     ///< Left out of the neighbours.
    double reach = 0;                      ///< mm within which a snap takes hold.
    bool free_x = true;                    ///< It may move along x; otherwise nothing snaps there.
    bool free_y = true;
    double step = 0;  ///< mm, 0 for none: on multiples of it the left edge rests without a snap.
};

/// The nearest snap along each axis by itself. Of snaps equally near, a gap comes before an
/// alignment of edges, that before one of centres, that before the room's lines; and of those the
/// one to the nearest neighbour.
Snapped snap(const wall::Project& project, const SnapWish& wish);

}  // namespace wallwright::desk
