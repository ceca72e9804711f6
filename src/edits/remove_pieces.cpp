// Taking pieces and mounts away, with what nobody else has.
#include "edits/card.h"
#include "edits/look_up.h"
#include "edits/pieces.h"
#include "edits/sound.h"
#include "edits/wishes.h"

#include <algorithm>

namespace wallwright::edits {

using wall::Piece;
using wall::PieceId;
using wall::Project;

namespace {

/// Drops the parts that pieces of before had and no piece has now; others may be kept for later.
template <auto Part, class T>
void drop_left_over(std::vector<T>& parts, const std::vector<Piece>& before,
                    const std::vector<Piece>& now) {
    std::erase_if(parts, [&](const T& part) {
        const auto has = [&part](const Piece& piece) { return piece.*Part == part.id; };
        return std::any_of(before.begin(), before.end(), has) &&
               std::none_of(now.begin(), now.end(), has);
    });
}

/// The same for prints, which are had by pieces and by windows of mounts.
void drop_prints_left_over(Project& project, const Project& before) {
    const auto is_had = [](const Project& by, const wall::PrintId& id) {
        return std::any_of(by.mounts.begin(), by.mounts.end(),
                           [&id](const wall::Mount& mount) { return has_window(mount, id); }) ||
               std::any_of(by.pieces.begin(), by.pieces.end(),
                           [&id](const Piece& piece) { return piece.print == id; });
    };
    std::erase_if(project.prints, [&](const wall::Print& print) {
        return is_had(before, print.id) && !is_had(project, print.id);
    });
}

}  // namespace

Result<Project> without_mount(Project project, const PieceId& id) {
    const std::vector<Piece> before = project.pieces;
    const auto piece = piece_in(project, id);
    if (!piece)
        return fail(piece.error());
    (*piece)->mount.reset();
    drop_left_over<&Piece::mount>(project.mounts, before, project.pieces);
    drop_loose_blanks(project);
    return sound(std::move(project));
}

Result<Project> remove_pieces(Project project, PieceIds ids) {
    if (const auto pieces = pieces_in(project, ids); !pieces)
        return fail(pieces.error());
    const Project before = project;
    drop_wishes_about(project, ids);
    std::erase_if(project.pieces, [ids](const Piece& piece) {
        return std::find(ids.begin(), ids.end(), piece.id) != ids.end();
    });
    drop_left_over<&Piece::frame>(project.frames, before.pieces, project.pieces);
    drop_left_over<&Piece::mount>(project.mounts, before.pieces, project.pieces);
    drop_prints_left_over(project, before);
    drop_loose_blanks(project);
    return sound(std::move(project));
}

}  // namespace wallwright::edits
