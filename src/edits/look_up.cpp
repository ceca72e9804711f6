#include "edits/look_up.h"

#include <algorithm>

namespace wallwright::edits {

using wall::Piece;
using wall::PieceState;
using wall::Project;

Result<Piece*> piece_in(Project& project, const wall::PieceId& id) {
    if (Piece* piece = wall::find_in(project.pieces, id))
        return piece;
    return fail(
        {"pieces/" + id.text, "there is no such piece", "name one that is in the project", ""});
}

Result<std::vector<Piece*>> pieces_in(Project& project, std::span<const wall::PieceId> ids) {
    std::vector<Piece*> pieces;
    for (const wall::PieceId& id : ids) {
        auto piece = piece_in(project, id);
        if (!piece)
            return fail(std::move(piece.error()));
        if (std::find(pieces.begin(), pieces.end(), *piece) == pieces.end())
            pieces.push_back(*piece);
    }
    return pieces;
}

Result<std::vector<Piece*>> placed_in(Project& project, std::span<const wall::PieceId> ids) {
    auto pieces = pieces_in(project, ids);
    if (!pieces)
        return pieces;
    for (const Piece* piece : *pieces)
        if (piece->state == PieceState::waiting)
            return fail({"pieces/" + piece->id.text, "it waits on the floor",
                         "put it on the wall first", ""});
    return pieces;
}

bool has_window(const wall::Mount& mount, const wall::PrintId& print) {
    return std::ranges::find(mount.openings, print, &wall::Opening::print) != mount.openings.end();
}

Outcome may_move(const Piece& piece) {
    if (!is_fixed(piece))
        return {};
    return fail({"pieces/" + piece.id.text, piece.pinned ? "it is pinned" : "it hangs already",
                 piece.pinned ? "unpin it to move it" : "call it planned to move it", ""});
}

Outcome may_move(const std::vector<Piece*>& pieces) {
    for (const Piece* piece : pieces)
        if (auto may = may_move(*piece); !may)
            return may;
    return {};
}

}  // namespace wallwright::edits
