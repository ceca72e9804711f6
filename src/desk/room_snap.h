// Where furniture, fixtures and the outline's corners want to rest.
#pragma once

#include "desk/selection.h"
#include "desk/snap.h"

#include <cstddef>

namespace wallwright::desk {

/// A thing of the room that is dragged, or one whose sides are.
struct RoomWish {
    geometry::Rect<geometry::Wall> place;  ///< Where the pointer has dragged it, without any snap.
    Thing thing;                           ///< Left out of what it may rest beside.
    double reach = 0;                      ///< mm within which a snap takes hold.
    bool free_x = true;                    ///< It may move along x; otherwise nothing snaps there.
    bool free_y = true;
    int side_x = 0;  ///< -1 or 1 when only its left or right side is dragged.
    int side_y = 0;  ///< -1 or 1 when only its lower or upper side is dragged.
};

/// For furniture and fixtures: the wall's ends and floor, the edges and middles of other things,
/// and beside and upon them. The nearest along each axis by itself; `by` is for the sides dragged.
Snapped snap_in_room(const wall::Project& project, const RoomWish& wish);

/// For a corner of the outline: level and plumb with the corners before and after it.
Snapped snap_corner(const wall::Project& project, std::size_t corner, const SnapWish& wish);

}  // namespace wallwright::desk
