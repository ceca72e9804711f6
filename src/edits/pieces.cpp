#include "edits/pieces.h"

#include "edits/by_hand.h"
#include "edits/card.h"
#include "edits/edit.h"
#include "edits/look_up.h"
#include "edits/sound.h"

namespace wallwright::edits {

using wall::Piece;
using wall::PieceId;
using wall::PieceState;
using wall::Project;

namespace {

void let_wait(Piece& piece) {
    piece.state = PieceState::waiting;
    piece.pinned = false;
    piece.stage = 0;
    piece.at.reset();
}

/// What hangs has been bought, and its stage is past.
void hang(Piece& piece) {
    piece.state = PieceState::hung;
    piece.wished = false;
    piece.stage = 0;
}

}  // namespace

Result<Project> change_piece(Project project, const PieceId& id,
                             const std::function<void(Piece&)>& change) {
    const auto piece = piece_in(project, id);
    if (!piece)
        return fail(piece.error());
    change_by_hand(**piece, change);
    drop_loose_blanks(project);
    return sound(std::move(project));
}

Result<Project> take_down(Project project, PieceIds ids) {
    const auto pieces = pieces_in(project, ids);
    if (!pieces)
        return fail(pieces.error());
    for (Piece* piece : *pieces)
        if (piece->state != PieceState::waiting)
            let_wait(*piece);
    return sound(std::move(project));
}

Result<Project> set_state(Project project, PieceIds ids, PieceState state) {
    if (state == PieceState::waiting)
        return take_down(std::move(project), ids);
    const auto pieces = placed_in(project, ids);
    if (!pieces)
        return fail(pieces.error());
    for (Piece* piece : *pieces)
        if (state == PieceState::hung)
            hang(*piece);
        else
            piece->state = state;
    return sound(std::move(project));
}

Result<Project> set_pinned(Project project, PieceIds ids, bool pinned) {
    const auto pieces = pinned ? placed_in(project, ids) : pieces_in(project, ids);
    if (!pieces)
        return fail(pieces.error());
    for (Piece* piece : *pieces)
        piece->pinned = pinned;
    return sound(std::move(project));
}

Result<Project> duplicate(Project project, PieceIds ids, geometry::Vec<geometry::Wall> by,
                          std::vector<PieceId>& made) {
    std::vector<PieceId> copies;
    for (const PieceId& id : ids) {
        const auto original = piece_in(project, id);
        if (!original)
            return fail(original.error());
        Piece copy = **original;
        wall::Frame frame = frame_of(project, copy);
        copy.pinned = false;
        copy.keeps_print = false;
        copy.mount_cut = false;
        copy.stage = 0;
        if (copy.state != PieceState::waiting) {
            copy.state = PieceState::planned;
            copy.at = *copy.at + by;
        }
        auto added = add_piece(std::move(project), std::move(frame), std::move(copy));
        if (!added)
            return added;
        project = std::move(*added);
        copies.push_back(project.pieces.back().id);
    }
    made = std::move(copies);
    return project;
}

}  // namespace wallwright::edits
