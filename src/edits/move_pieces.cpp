// Pieces moved one by one: shifted, turned, swapped.
#include "edits/look_up.h"
#include "edits/pieces.h"
#include "edits/sound.h"

namespace wallwright::edits {

using geometry::Vec;
using geometry::Wall;
using wall::Piece;
using wall::PieceId;
using wall::PieceState;
using wall::Project;

namespace {

/// From the lower left corner of a size to that of another with the same centre. In file steps, so
/// that the way back is as long.
Vec<Wall> to_same_centre(wall::Size from, wall::Size to) {
    return {to_file_step((from.width - to.width) / 2), to_file_step((from.height - to.height) / 2)};
}

void shift_if_placed(Piece& piece, Vec<Wall> by) {
    if (piece.at)
        piece.at = *piece.at + by;
}

}  // namespace

Result<Project> shift(Project project, PieceIds ids, Vec<Wall> by) {
    const auto pieces = placed_in(project, ids);
    if (!pieces)
        return fail(pieces.error());
    if (auto may = may_move(*pieces); !may)
        return fail(std::move(may.error()));
    for (Piece* piece : *pieces)
        shift_if_placed(*piece, by);
    return sound(std::move(project));
}

Result<Project> turn(Project project, PieceIds ids) {
    const auto pieces = pieces_in(project, ids);
    if (!pieces)
        return fail(pieces.error());
    if (auto may = may_move(*pieces); !may)
        return fail(std::move(may.error()));
    for (Piece* piece : *pieces) {
        const wall::Size size = outside_size(project, *piece);
        shift_if_placed(*piece, to_same_centre(size, size.turned()));
        piece->turned = !piece->turned;
        piece->mount_cut = false;
    }
    return sound(std::move(project));
}

Result<Project> swap_places(Project project, const PieceId& first, const PieceId& second) {
    const PieceId ids[] = {first, second};
    const auto pieces = pieces_in(project, ids);
    if (!pieces)
        return fail(pieces.error());
    if (auto may = may_move(*pieces); !may)
        return fail(std::move(may.error()));
    Piece& one = *pieces->front();
    Piece& other = *pieces->back();
    if (one.state == PieceState::waiting && other.state == PieceState::waiting)
        return fail({"pieces/" + one.id.text, "both pieces wait on the floor",
                     "put one of them on the wall first", ""});
    const Vec<Wall> step = to_same_centre(outside_size(project, other), outside_size(project, one));
    std::swap(one.at, other.at);
    std::swap(one.state, other.state);
    std::swap(one.stage, other.stage);
    shift_if_placed(one, step);
    shift_if_placed(other, -1 * step);
    return sound(std::move(project));
}

}  // namespace wallwright::edits
