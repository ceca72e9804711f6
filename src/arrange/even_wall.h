// Even gaps on a whole wall: the project's pieces in, the project with its gaps even out.
#pragma once

#include "arrange/keep_out.h"

namespace wallwright::arrange {

struct Movement {
    wall::PieceId piece;
    geometry::Point<geometry::Wall> by;  ///< mm right and up.
};

struct EvenedWall {
    wall::Project project;
    spacing::EvenResult result;
    std::vector<Movement> moved;  ///< By more than rounding, in the project's order.
    double farthest = 0;          ///< mm that the farthest of them went.
};

/// Planned pieces are moved as little as they can be until the gaps of their groups are the wanted
/// gap of the project's style, on whole hundredths of a millimetre. What hangs or is pinned stays.
/// A Problem only when the moved project is not sound.
Result<EvenedWall> even_wall(const wall::Project& project);

}  // namespace wallwright::arrange
