// Frame, mount and print of one piece, changed for it alone.
#include "base/contract.h"
#include "edits/by_hand.h"
#include "edits/card.h"
#include "edits/free_id.h"
#include "edits/look_up.h"
#include "edits/pieces.h"
#include "edits/sound.h"

#include <algorithm>
#include <cmath>

namespace wallwright::edits {

using wall::Frame;
using wall::Mount;
using wall::Piece;
using wall::PieceId;
using wall::Print;
using wall::Project;

namespace {

template <auto Part>
bool others_share(const Project& project, const Piece& piece) {
    return std::any_of(project.pieces.begin(), project.pieces.end(), [&piece](const Piece& one) {
        return one.id != piece.id && one.*Part == piece.*Part;
    });
}

/// The part of that id, or a copy of it under the piece's own name when others have it too.
template <class T>
T& own_part(std::vector<T>& parts, const decltype(T::id)& id, bool shared, const PieceId& owner) {
    T* part = wall::find_in(parts, id);
    WW_EXPECT(part != nullptr, "every piece has its parts in the project");
    return shared ? add_with_id(parts, T(*part), owner.text) : *part;
}

/// A print that lies loose in the rebate of the piece's frame, or that leaves a border to its mount
/// of a sixth of the opening's shorter side (our choice); in whole mm.
Print usual_print(const Project& project, const Piece& piece) {
    constexpr double kLoose = 2;  // mm, as mounts/window.h has it
    constexpr double kBorderShare = 1.0 / 6;
    const Frame& frame = frame_of(project, piece);
    const wall::Size outside = outside_size(project, piece);
    const double lost = 2 * (frame.moulding_width - frame.rebate_width);
    const wall::Size opening{outside.width - lost, outside.height - lost};
    const double border = kBorderShare * std::min(opening.width, opening.height);
    const double less = piece.mount ? 2 * border : kLoose;
    Print print;
    print.title = piece.title;
    print.size = {std::floor(opening.width - less), std::floor(opening.height - less)};
    return print;
}

/// A mount that others look through, with a window for the print, shares it too.
bool others_share_print(const Project& project, const Piece& piece) {
    const auto others_see_it = [&](const Mount& mount) {
        return has_window(mount, *piece.print) &&
               (mount.id != piece.mount || others_share<&Piece::mount>(project, piece));
    };
    return others_share<&Piece::print>(project, piece) ||
           std::any_of(project.mounts.begin(), project.mounts.end(), others_see_it);
}

/// The mount of the piece for it alone.
Mount& own_mount(Project& project, Piece& piece) {
    const bool shared = others_share<&Piece::mount>(project, piece);
    Mount& mount = own_part(project.mounts, *piece.mount, shared, piece.id);
    piece.mount = mount.id;
    return mount;
}

/// The window that the piece's mount has for one print is for another from now on.
void move_window(Project& project, Piece& piece, const wall::PrintId& from,
                 const wall::PrintId& to) {
    if (!piece.mount || from == to || !has_window(*find(project, *piece.mount), from))
        return;
    for (wall::Opening& opening : own_mount(project, piece).openings)
        if (opening.print == from)
            opening.print = to;
}

bool takes_another_mount(const Frame& before, const Frame& after) {
    return before.outside != after.outside || before.moulding_width != after.moulding_width ||
           before.rebate_width != after.rebate_width || before.back_board != after.back_board;
}

}  // namespace

Result<Project> change_frame(Project project, const PieceId& id,
                             const std::function<void(Frame&)>& change) {
    const auto found = piece_in(project, id);
    if (!found)
        return fail(found.error());
    Piece& piece = **found;
    const bool shared = others_share<&Piece::frame>(project, piece);
    Frame& frame = own_part(project.frames, piece.frame, shared, piece.id);
    piece.frame = frame.id;
    const Frame before = frame;
    change_by_hand(frame, change);
    if (takes_another_mount(before, frame))
        cut_anew(project, frame.id);
    return sound(std::move(project));
}

Result<Project> change_mount(Project project, const PieceId& id,
                             const std::function<void(Mount&)>& change) {
    const auto found = piece_in(project, id);
    if (!found)
        return fail(found.error());
    Piece& piece = **found;
    if (!piece.mount)
        piece.mount = add_with_id(project.mounts, Mount{}, piece.id.text).id;
    Mount& mount = own_mount(project, piece);
    const Mount before = mount;
    change_by_hand(mount, change);
    if (mount != before)
        cut_anew(project, mount.id);
    drop_loose_blanks(project);
    return sound(std::move(project));
}

Result<Project> change_print(Project project, const PieceId& id,
                             const std::function<void(Print&)>& change) {
    const auto found = piece_in(project, id);
    if (!found)
        return fail(found.error());
    Piece& piece = **found;
    if (!piece.print)
        piece.print = add_with_id(project.prints, usual_print(project, piece), piece.id.text).id;
    const wall::PrintId before = *piece.print;
    const bool shared = others_share_print(project, piece);
    Print& print = own_part(project.prints, before, shared, piece.id);
    piece.print = print.id;
    const wall::Size size = print.size;
    change_by_hand(print, change);
    const wall::PrintId now = print.id;
    const bool resized = print.size != size;
    move_window(project, piece, before, now);
    if (resized)
        cut_anew(project, now);
    return sound(std::move(project));
}

}  // namespace wallwright::edits
