// Prints into frames with the mount that each then wants.
#pragma once

#include "edits/prints.h"

#include <optional>
#include <span>

namespace wallwright::edits {

/// A piece, the print that goes into it, and whether a mount is to lie over that.
struct PrintWithMount {
    wall::PieceId piece;
    std::optional<wall::PrintId> print;  ///< None empties the frame; its mount then stays.
    /// Lies over the print: the piece gets this one where it has no mount yet, whose id is then
    /// made from the piece's. None: the print fills the frame, and a mount there is taken out.
    std::optional<wall::Mount> mount;
};

/// put_prints(), and each piece that gets a print has the mount that this one wants. A window
/// that was placed by hand was placed for the print before: where that was another, the new one
/// goes by the mount's own measures again. Mounts that several pieces share are copied first.
Result<wall::Project> put_prints_with_mounts(wall::Project project,
                                             std::span<const PrintWithMount> wanted);

}  // namespace wallwright::edits
