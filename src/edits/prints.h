// Edits of which print is in which frame.
#pragma once

#include "edits/pieces.h"

#include <optional>

namespace wallwright::edits {

/// Into the drawer. Its id is made from its title, or else "print", and put into `made`.
Result<wall::Project> add_print(wall::Project project, wall::Print print, wall::PrintId& made);
/// Changes a print for all that have it; its id is not to be changed.
Result<wall::Project> change_print_everywhere(wall::Project project, const wall::PrintId& id,
                                              const std::function<void(wall::Print&)>& change);
/// Out of the drawer, out of the pieces that have it, which then keep none, and with its windows.
Result<wall::Project> remove_print(wall::Project project, const wall::PrintId& id);

/// A piece and the print that goes into it; none empties its frame.
struct PrintInPiece {
    wall::PieceId piece;
    std::optional<wall::PrintId> print;
};

/// Puts prints into the frames of pieces; what was in them goes back into the drawer, and mounts
/// stay where they are. A piece that keeps its print and would lose it is a Problem, and so is a
/// print that is not there.
Result<wall::Project> put_prints(wall::Project project, std::span<const PrintInPiece> wanted);
/// The same for one piece.
Result<wall::Project> put_print(wall::Project project, const wall::PieceId& piece,
                                std::optional<wall::PrintId> print);
/// Each gets the other's print; one of them may have none.
Result<wall::Project> swap_prints(wall::Project project, const wall::PieceId& first,
                                  const wall::PieceId& second);
/// Their prints stay in them when prints are matched to frames, or no longer. A piece without a
/// print has none to keep.
Result<wall::Project> set_keeps_print(wall::Project project, PieceIds ids, bool keeps);

}  // namespace wallwright::edits
