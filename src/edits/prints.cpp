#include "edits/prints.h"

#include "edits/by_hand.h"
#include "edits/card.h"
#include "edits/edit.h"
#include "edits/free_id.h"
#include "edits/look_up.h"
#include "edits/sound.h"

namespace wallwright::edits {

using wall::Piece;
using wall::PieceId;
using wall::Print;
using wall::PrintId;
using wall::Project;

namespace {

Problem no_such_print(const PrintId& id) {
    return {"prints/" + id.text, "there is no such print", "name one that is in the project", ""};
}

Outcome put(Project& project, const PrintInPiece& wanted) {
    const auto found = piece_in(project, wanted.piece);
    if (!found)
        return fail(found.error());
    Piece& piece = **found;
    if (piece.keeps_print && piece.print != wanted.print)
        return fail({"pieces/" + piece.id.text, "it keeps its print",
                     "let its print go to put another into it", ""});
    piece.mount_cut = piece.mount_cut && piece.print == wanted.print;
    piece.print = wanted.print;
    return {};
}

}  // namespace

Result<Project> add_print(Project project, Print print, PrintId& made) {
    const std::string wanted = print.title.empty() ? "print" : id_from(print.title);
    const PrintId id = add_with_id(project.prints, std::move(print), wanted).id;
    auto added = sound(std::move(project));
    if (added)
        made = id;
    return added;
}

Result<Project> change_print_everywhere(Project project, const PrintId& id,
                                        const std::function<void(Print&)>& change) {
    Print* print = wall::find_in(project.prints, id);
    if (print == nullptr)
        return fail(no_such_print(id));
    const wall::Size size = print->size;
    change_by_hand(*print, change);
    if (print->size != size)
        cut_anew(project, id);
    return sound(std::move(project));
}

Result<Project> remove_print(Project project, const PrintId& id) {
    if (find(project, id) == nullptr)
        return fail(no_such_print(id));
    cut_anew(project, id);
    std::erase_if(project.prints, [&id](const Print& one) { return one.id == id; });
    for (wall::Mount& mount : project.mounts)
        std::erase_if(mount.openings,
                      [&id](const wall::Opening& opening) { return opening.print == id; });
    for (Piece& piece : project.pieces)
        if (piece.print == id) {
            piece.print.reset();
            piece.keeps_print = false;
        }
    return sound(std::move(project));
}

Result<Project> put_prints(Project project, std::span<const PrintInPiece> wanted) {
    for (const PrintInPiece& one : wanted)
        if (auto done = put(project, one); !done)
            return fail(std::move(done.error()));
    return sound(std::move(project));
}

Result<Project> put_print(Project project, const PieceId& piece, std::optional<PrintId> print) {
    const PrintInPiece wanted[] = {{piece, std::move(print)}};
    return put_prints(std::move(project), wanted);
}

Result<Project> swap_prints(Project project, const PieceId& first, const PieceId& second) {
    const PieceId ids[] = {first, second};
    if (const auto pieces = pieces_in(project, ids); !pieces)
        return fail(pieces.error());
    const PrintInPiece wanted[] = {{first, find(project, second)->print},
                                   {second, find(project, first)->print}};
    return put_prints(std::move(project), wanted);
}

Result<Project> set_keeps_print(Project project, PieceIds ids, bool keeps) {
    const auto pieces = pieces_in(project, ids);
    if (!pieces)
        return fail(pieces.error());
    for (Piece* piece : *pieces) {
        if (keeps && !piece->print)
            return fail({"pieces/" + piece->id.text, "there is no print in it to keep",
                         "put one into it first", ""});
        piece->keeps_print = keeps;
    }
    return sound(std::move(project));
}

}  // namespace wallwright::edits
