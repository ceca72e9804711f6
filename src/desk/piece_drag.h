// Pieces that the pointer carries along the wall, up from the floor or down to it.
#pragma once

#include "desk/drag.h"
#include "desk/hit.h"
#include "desk/session.h"

#include <optional>
#include <vector>

namespace wallwright::desk {

struct PieceDrag {
    struct Carried {
        wall::PieceId piece;
        geometry::Rect<geometry::Wall> place;  ///< When the drag began.
    };
    std::vector<Carried> pieces;            ///< Empty when nothing may move.
    geometry::Rect<geometry::Wall> bounds;  ///< Around them; what snaps.
    bool from_floor = false;
    std::optional<Notice> notice;  ///< What stays, why, and what to do.
};

/// The piece `held` and those of `selected` that are where it is, on the wall or on the floor: who
/// pulls a picture along does not mean those that wait. Hung and pinned ones stay.
PieceDrag take_hold(const wall::Project& project, const std::vector<Waiting>& waiting,
                    const std::vector<wall::PieceId>& selected, const wall::PieceId& held);

/// A waiting piece is placed while its centre is above the wall's lowest floor and it meets the
/// outline's bounds; a placed one is taken down while its centre is below that floor.
Dragged follow(const wall::Project& kept, const PieceDrag& drag, const Pull& pull);

}  // namespace wallwright::desk
