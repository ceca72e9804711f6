// One frame as a line of a table gives it, before it becomes a frame and a piece.
#pragma once

#include "wall/piece.h"

#include <optional>
#include <string>

namespace wallwright::wall {

struct FrameRow {
    std::string title;
    Size outside;                 ///< mm over the moulding.
    std::optional<double> depth;  ///< mm
    std::optional<Kilograms> weighed;
    HangerType hanger = HangerType::strips;
    PieceState state = PieceState::waiting;
    std::optional<Point<Wall>> at;  ///< Lower left corner.
};

}  // namespace wallwright::wall
