// Whose mount is still to be cut: the same for the card plan, the sheets and the machine.
#pragma once

#include "wall/project.h"

#include <optional>
#include <string>

namespace wallwright::mounts {

/// The piece has a mount that is not said to be cut, does not hang yet, and its frame is there.
inline bool is_still_to_cut(const wall::Piece& piece) {
    return piece.mount && !piece.mount_cut && piece.state != wall::PieceState::hung &&
           !piece.wished;
}

/// A sentence, where its mount cannot be cut: it has none, a window without a print, or a remark
/// that is a stop.
std::optional<std::string> why_not_cut(const wall::Project& project, const wall::Piece& piece);

}  // namespace wallwright::mounts
