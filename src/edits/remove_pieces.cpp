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

/// Of a piece that is gone.
void measure_from_the_floor_instead(Project& project) {
    wall::Datum& datum = project.datum;
    if (!datum.piece || wall::find(project, *datum.piece) != nullptr)
        return;
    datum.piece.reset();
    if (datum.height == wall::DatumHeight::piece)
        datum.height = wall::DatumHeight::floor;
}

}  // namespace

Result<Project> without_mount(Project project, const PieceId& id) {
    const std::vector<Piece> before = project.pieces;
    const auto piece = piece_in(project, id);
    if (!piece)
        return fail(piece.error());
    (*piece)->mount.reset();
    (*piece)->mount_cut = false;
    drop_left_over<&Piece::mount>(project.mounts, before, project.pieces);
    drop_loose_blanks(project);
    return sound(std::move(project));
}

Result<Project> remove_pieces(Project project, PieceIds ids) {
    if (const auto pieces = pieces_in(project, ids); !pieces)
        return fail(pieces.error());
    const std::vector<Piece> before = project.pieces;
    drop_wishes_about(project, ids);
    std::erase_if(project.pieces, [ids](const Piece& piece) {
        return std::find(ids.begin(), ids.end(), piece.id) != ids.end();
    });
    drop_left_over<&Piece::frame>(project.frames, before, project.pieces);
    drop_left_over<&Piece::mount>(project.mounts, before, project.pieces);
    drop_loose_blanks(project);
    measure_from_the_floor_instead(project);
    return sound(std::move(project));
}

}  // namespace wallwright::edits
