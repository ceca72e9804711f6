// Edits of pieces. Each takes a project and gives another, or the Problem that forbids it.
#pragma once

#include "base/problem.h"
#include "wall/project.h"

#include <functional>
#include <span>
#include <vector>

namespace wallwright::edits {

using PieceIds = std::span<const wall::PieceId>;

/// Changes one piece by hand; its id is not to be changed. The result must be sound.
Result<wall::Project> change_piece(wall::Project project, const wall::PieceId& id,
                                   const std::function<void(wall::Piece&)>& change);
/// Changes the frame, mount or print of one piece. What it shares with other pieces is copied
/// first, so that only this piece changes; a mount or print that it does not have yet is made
/// first: a print that lies in the frame, smaller where a mount is to surround it, a mount of the
/// usual measures. The `change` leaves the id alone.
Result<wall::Project> change_frame(wall::Project project, const wall::PieceId& id,
                                   const std::function<void(wall::Frame&)>& change);
Result<wall::Project> change_mount(wall::Project project, const wall::PieceId& id,
                                   const std::function<void(wall::Mount&)>& change);
Result<wall::Project> change_print(wall::Project project, const wall::PieceId& id,
                                   const std::function<void(wall::Print&)>& change);
/// Takes the mount out of the piece; one that no other piece has goes.
Result<wall::Project> without_mount(wall::Project project, const wall::PieceId& id);

/// Shifts planned pieces. A hung or pinned one is a Problem that says which.
Result<wall::Project> shift(wall::Project project, PieceIds ids, geometry::Vec<geometry::Wall> by);
/// Takes placed pieces, hung and pinned ones too, off the wall to the floor, where no pin holds
/// them and no stage counts them. Those that wait go on waiting.
Result<wall::Project> take_down(wall::Project project, PieceIds ids);
/// hung and planned keep the place; a waiting piece has none, so it must be placed first. waiting
/// takes down. What hangs is wished for no longer and has no stage.
Result<wall::Project> set_state(wall::Project project, PieceIds ids, wall::PieceState state);
/// A waiting piece cannot be pinned.
Result<wall::Project> set_pinned(wall::Project project, PieceIds ids, bool pinned);
/// A quarter turn of planned or waiting pieces, placed ones about their centres.
Result<wall::Project> turn(wall::Project project, PieceIds ids);
/// Each takes the other's place, centre on centre, and goes up in its stage. One of two planned
/// pieces may wait; the other then waits instead.
Result<wall::Project> swap_places(wall::Project project, const wall::PieceId& first,
                                  const wall::PieceId& second);
/// With the frames and mounts that only they had, the wishes about them and the blanks kept of
/// their mounts; their prints go back into the drawer.
Result<wall::Project> remove_pieces(wall::Project project, PieceIds ids);

/// Copies with frames of their own and the title of the original, that do not keep their print;
/// placed ones are planned, in no stage, and shifted by `by`. Wishes about the originals are not
/// copied. `made` gets their ids.
Result<wall::Project> duplicate(wall::Project project, PieceIds ids,
                                geometry::Vec<geometry::Wall> by, std::vector<wall::PieceId>& made);

/// left, right, bottom and top edges, or centres along x or y.
enum class Line { left, centre_x, right, bottom, centre_y, top };
/// Moves the planned, unpinned ones so that the line of all is that of the first fixed piece among
/// them, or else their outermost (the middle of their bounds for centres). Two or more pieces.
Result<wall::Project> align(wall::Project project, PieceIds ids, Line line);

enum class Direction { across, up };
/// Equal gaps between the outermost two along one axis; these stay. Three or more pieces, those
/// between neither hung nor pinned. Too little room for them is a Problem that says how much.
Result<wall::Project> distribute(wall::Project project, PieceIds ids, Direction direction);

}  // namespace wallwright::edits
