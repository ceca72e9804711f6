#include "edits/mounts.h"

#include "base/contract.h"
#include "edits/by_hand.h"
#include "edits/card.h"
#include "edits/free_id.h"
#include "edits/look_up.h"
#include "edits/pieces.h"
#include "edits/sound.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::edits {

using wall::FromCorner;
using wall::Mount;
using wall::MountId;
using wall::Opening;
using wall::Piece;
using wall::PieceId;
using wall::PrintId;
using wall::Project;
using wall::WindowOrder;

namespace {

Problem no_such_mount(const MountId& id) {
    return {"mounts/" + id.text, "there is no such mount", "name one that is in the project", ""};
}

Problem no_mount(const Piece& piece) {
    return {"pieces/" + piece.id.text, "it has no mount", "give it one first", ""};
}

auto users_of(const Project& project, const MountId& id) {
    return std::ranges::count(project.pieces, std::optional(id), &Piece::mount);
}

/// The mount that most pieces have, the first of those; null where none has any.
const Mount* most_used(const Project& project) {
    const Mount* most = nullptr;
    for (const Mount& mount : project.mounts) {
        const auto users = users_of(project, mount.id);
        if (users > 0 && (most == nullptr || users > users_of(project, most->id)))
            most = &mount;
    }
    return most;
}

/// Its measures, boards and colours, and nothing that is about one print.
Mount like(const Mount& other) {
    Mount mount = other;
    mount.id = {};
    mount.title.clear();
    mount.by_hand.reset();
    mount.openings.clear();
    mount.order = WindowOrder::row;
    mount.floats = false;
    mount.unknown = {};
    return mount;
}

/// The window that there is gets the name of its print, so that others can stand beside it.
void name_first_window(Mount& mount, const PrintId& print) {
    if (!mount.openings.empty())
        return;
    mount.openings.push_back({print, std::nullopt, {}});
    mount.by_hand.reset();
    if (mount.order == WindowOrder::by_hand)
        mount.order = WindowOrder::row;
}

void drop_last_window(Project& project, Mount& mount) {
    if (mount.openings.size() != 1 || users_of(project, mount.id) != 1)
        return;
    auto user = std::ranges::find(project.pieces, std::optional(mount.id), &Piece::mount);
    user->print = mount.openings.front().print;
    mount.openings.clear();
    if (mount.order == WindowOrder::by_hand)
        mount.order = WindowOrder::row;
}

void place(Mount& mount, std::span<const FromCorner> at) {
    const bool is_apart = !mount.openings.empty() && mount.order == WindowOrder::by_hand;
    if (mount.openings.size() < 2 && !is_apart) {
        mount.by_hand = at.front();
        return;
    }
    mount.order = WindowOrder::by_hand;
    for (std::size_t i = 0; i < mount.openings.size(); ++i)
        mount.openings[i].at = at[i];
}

void release(Mount& mount, WindowOrder order) {
    mount.by_hand.reset();
    mount.order = order;
    for (Opening& opening : mount.openings)
        opening.at.reset();
}

}  // namespace

Result<Project> change_mount_everywhere(Project project, const MountId& id,
                                        const std::function<void(Mount&)>& change) {
    Mount* mount = wall::find_in(project.mounts, id);
    if (mount == nullptr)
        return fail(no_such_mount(id));
    const Mount before = *mount;
    change_by_hand(*mount, change);
    if (*mount != before)
        cut_anew(project, id);
    drop_loose_blanks(project);
    return sound(std::move(project));
}

Result<Project> put_mount(Project project, const PieceId& piece, const MountId& mount) {
    const auto found = piece_in(project, piece);
    if (!found)
        return fail(found.error());
    const std::optional<MountId> before = (*found)->mount;
    (*found)->mount = mount;
    (*found)->mount_cut = (*found)->mount_cut && before == mount;
    if (before && before != mount && users_of(project, *before) == 0)
        std::erase_if(project.mounts, [&before](const Mount& one) { return one.id == *before; });
    drop_loose_blanks(project);
    return sound(std::move(project));
}

Result<Project> own_mount(Project project, const PieceId& piece) {
    const auto found = piece_in(project, piece);
    if (!found)
        return fail(found.error());
    if (!(*found)->mount)
        return fail(no_mount(**found));
    return change_mount(std::move(project), piece, [](Mount&) {});
}

Result<Project> give_mount(Project project, const PieceId& piece) {
    const auto found = piece_in(project, piece);
    if (!found)
        return fail(found.error());
    if ((*found)->mount)
        return project;
    const Mount* const other = most_used(project);
    const Mount wanted = other == nullptr ? Mount{} : like(*other);
    (*found)->mount = add_with_id(project.mounts, wanted, piece.text).id;
    return sound(std::move(project));
}

Result<Project> add_window(Project project, const PieceId& piece, const PrintId& print,
                           FromCorner at) {
    const auto found = piece_in(project, piece);
    if (!found)
        return fail(found.error());
    const Piece& whose = **found;
    if (!whose.mount)
        return fail(no_mount(whose));
    Mount* mount = wall::find_in(project.mounts, *whose.mount);
    WW_EXPECT(mount != nullptr, "every piece has its parts in the project");
    if (mount->openings.empty() && !whose.print)
        return fail({"pieces/" + piece.text, "it has no print for the window that there is",
                     "put one into it first", ""});
    if (mount->openings.empty())
        name_first_window(*mount, *whose.print);
    const bool by_hand = mount->order == WindowOrder::by_hand;
    mount->openings.push_back({print, by_hand ? std::optional(at) : std::nullopt, {}});
    cut_anew(project, mount->id);
    return sound(std::move(project));
}

Result<Project> remove_window(Project project, const MountId& mount, const PrintId& print) {
    Mount* found = wall::find_in(project.mounts, mount);
    if (found == nullptr)
        return fail(no_such_mount(mount));
    const auto gone = std::erase_if(
        found->openings, [&print](const Opening& opening) { return opening.print == print; });
    if (gone == 0)
        return fail({"mounts/" + mount.text, fmt::format("it has no window for \"{}\"", print.text),
                     "name a print that has one there", ""});
    drop_last_window(project, *found);
    cut_anew(project, mount);
    return sound(std::move(project));
}

Result<Project> place_windows(Project project, const MountId& mount,
                              std::span<const FromCorner> at) {
    Mount* found = wall::find_in(project.mounts, mount);
    if (found == nullptr)
        return fail(no_such_mount(mount));
    const std::size_t windows = std::max<std::size_t>(1, found->openings.size());
    if (at.size() != windows)
        return fail({"mounts/" + mount.text,
                     fmt::format("{} places are given for {} windows", at.size(), windows),
                     "give one for each window", ""});
    place(*found, at);
    cut_anew(project, mount);
    return sound(std::move(project));
}

Result<Project> release_windows(Project project, const MountId& mount, WindowOrder order) {
    WW_EXPECT(order != WindowOrder::by_hand, "windows that are released stand in a row or column");
    return change_mount_everywhere(std::move(project), mount,
                                   [order](Mount& changed) { release(changed, order); });
}

Result<Project> set_base(Project project, const MountId& mount, BaseRule rule, double amount) {
    return change_mount_everywhere(std::move(project), mount, [rule, amount](Mount& changed) {
        release(changed, changed.order == WindowOrder::by_hand ? WindowOrder::row : changed.order);
        changed.base_extra = rule == BaseRule::wider_by ? amount : 0;
        changed.base_ratio.reset();
        if (rule == BaseRule::by_ratio)
            changed.base_ratio = amount;
    });
}

}  // namespace wallwright::edits
