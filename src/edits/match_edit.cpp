#include "edits/match_edit.h"

#include <vector>

namespace wallwright::edits {

using wall::Mount;
using wall::Piece;
using wall::Project;

namespace {

Result<Project> give_mount(Project project, const wall::PieceId& piece, const Mount& wanted) {
    return change_mount(std::move(project), piece, [&wanted](Mount& made) {
        const wall::MountId id = made.id;
        made = wanted;
        made.id = id;
    });
}

Result<Project> forget_place(Project project, const wall::PieceId& piece) {
    return change_mount(std::move(project), piece, [](Mount& mount) { mount.by_hand.reset(); });
}

/// `before` had another print in this piece, or the same.
Result<Project> fit_mount(Project project, const PrintWithMount& one, const Piece& before) {
    if (!one.print)
        return project;
    if (!one.mount)
        return before.mount ? without_mount(std::move(project), one.piece)
                            : Result<Project>(std::move(project));
    if (!before.mount)
        return give_mount(std::move(project), one.piece, *one.mount);
    const Mount* mount = find(project, *before.mount);
    if (mount->by_hand && before.print != one.print)
        return forget_place(std::move(project), one.piece);
    return project;
}

}  // namespace

Result<Project> put_prints_with_mounts(Project project, std::span<const PrintWithMount> wanted) {
    std::vector<PrintInPiece> prints;
    for (const PrintWithMount& one : wanted)
        prints.push_back({one.piece, one.print});
    const Project before = project;
    auto changed = put_prints(std::move(project), prints);
    for (const PrintWithMount& one : wanted)
        if (changed)
            changed = fit_mount(std::move(*changed), one, *find(before, one.piece));
    return changed;
}

}  // namespace wallwright::edits
