// Finding by its id what is to be edited, or the Problem that it is not there or may not be edited
// so. Pointers are for immediate use.
#pragma once

#include "base/problem.h"
#include "wall/find_in.h"
#include "wall/project.h"

#include <span>
#include <vector>

namespace wallwright::edits {

Result<wall::Piece*> piece_in(wall::Project& project, const wall::PieceId& id);
/// Each once, in the order of the ids.
Result<std::vector<wall::Piece*>> pieces_in(wall::Project& project,
                                            std::span<const wall::PieceId> ids);
/// As pieces_in; one that waits on the floor is a Problem.
Result<std::vector<wall::Piece*>> placed_in(wall::Project& project,
                                            std::span<const wall::PieceId> ids);

/// Whether the mount has a window for the print by name.
bool has_window(const wall::Mount& mount, const wall::PrintId& print);

/// A Problem when the piece hangs or is pinned.
Outcome may_move(const wall::Piece& piece);
Outcome may_move(const std::vector<wall::Piece*>& pieces);

}  // namespace wallwright::edits
