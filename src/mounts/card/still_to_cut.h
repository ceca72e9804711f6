// Whose mount is still to be cut: the same for the card plan and for the sheets.
#pragma once

#include "wall/project.h"

namespace wallwright::mounts {

/// The piece has a mount, does not hang yet, and its frame is there.
inline bool is_still_to_cut(const wall::Piece& piece) {
    return piece.mount && piece.state != wall::PieceState::hung && !piece.wished;
}

}  // namespace wallwright::mounts
