#include "desk/bench/mount_drag.h"

#include "base/contract.h"
#include "desk/bench/mount_places.h"
#include "desk/bench/mount_tool.h"
#include "desk/drag.h"
#include "edits/mounts.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::desk {

namespace {

using geometry::Rect;
using mounts::Front;
using mounts::MountDesign;
using wall::FromCorner;
using wall::Mount;
using wall::Piece;
using wall::Project;
using wall::WindowOrder;

/// What a drag begins with.
struct Held {
    const Project& project;
    const Piece& piece;
    const Mount& mount;
    MountDesign design;
    MountPart part;
};

Held hold(const Project& project, const wall::PieceId& id, const MountPart& part) {
    const Piece* piece = wall::find(project, id);
    WW_EXPECT(piece != nullptr, "what is dragged is in the project");
    auto design = mounts::design_of(project, *piece);
    WW_EXPECT(design.has_value(), "what is dragged is a mount that can be made");
    return {project, *piece, *wall::find(project, *piece->mount), std::move(*design), part};
}

/// How far a window is past the lip, on each side.
std::string past_lip_words(const Held& held, const Rect<Front>& place) {
    const mounts::Borders& lip = held.design.lip;
    const wall::Size blank = held.design.blank;
    const auto figure = [&held](double mm) { return units::format_number(mm, held.project.unit); };
    return fmt::format(
        "Seen: {} left, {} right, {} above, {} {} below", figure(place.min.x - lip.left),
        figure(blank.width - place.max.x - lip.right), figure(place.min.y - lip.top),
        figure(blank.height - place.max.y - lip.bottom), units::name_of(held.project.unit));
}

WindowWish wish_of(const Held& held, const MountPull& pull) {
    WindowWish wish;
    wish.blank = held.design.blank;
    wish.lip = held.design.lip;
    wish.place = window_at(held.design, held.part.window).moved(pull.by);
    for (std::size_t i = 0; i < window_count(held.design); ++i)
        if (i != held.part.window)
            wish.others.push_back(window_at(held.design, i));
    wish.bar = held.mount.bar;
    wish.reach = pull.free ? kNoSnap : pull.reach;
    wish.step = hand_step(held.project.unit);
    return wish;
}

MountDragged pull_window(const Held& held, const MountPull& pull) {
    WindowRest rest = rest_of(wish_of(held, pull));
    std::vector<FromCorner> corners = corners_of(held.design);
    corners[held.part.window] = {std::max(0.0, rest.place.min.x), std::max(0.0, rest.place.min.y)};
    return {edits::place_windows(held.project, held.mount.id, corners),
            fmt::format("Move the window of {}", wall::title_of(held.piece)),
            past_lip_words(held, rest.place), std::move(rest.guides)};
}

/// Another window stands in line beyond this edge.
bool is_inner(const Held& held) {
    const MountPart& part = held.part;
    const bool along = (held.mount.order == WindowOrder::row && part.x != 0) ||
                       (held.mount.order == WindowOrder::column && part.y != 0);
    const bool is_last =
        part.x + part.y > 0 ? part.window + 1 == window_count(held.design) : part.window == 0;
    return along && !is_last;
}

/// mm of the dragged edge from the blank's left or upper edge.
double edge_of(const MountDesign& design, const MountPart& part) {
    const Rect<Front> place = window_at(design, part.window);
    if (part.x != 0)
        return part.x < 0 ? place.min.x : place.max.x;
    return part.y < 0 ? place.min.y : place.max.y;
}

/// The overlap of the dragged window in the direction of the edge, after growing.
double overlap_now(const Held& held) {
    const mounts::LaidPrint& print = held.design.prints[held.part.window];
    return held.part.x != 0 ? print.across : print.down;
}

/// Windows that are placed by hand keep the middles that they were held with.
Result<Project> about_middles(const Held& held, Project project) {
    const auto design = mounts::design_of(project, *wall::find(project, held.piece.id));
    WW_EXPECT(design.has_value(), "another overlap takes no print away");
    return edits::place_windows(std::move(project), held.mount.id,
                                corners_about(*design, held.design));
}

Result<Project> with_overlap(const Held& held, double overlap) {
    auto changed =
        edits::change_mount_everywhere(held.project, held.mount.id, [overlap](Mount& mount) {
            mount.overlap = overlap;
            mount.overlap_most = std::max(mount.overlap_most, overlap);
        });
    if (!changed || !is_by_hand(held.mount))
        return changed;
    return about_middles(held, std::move(*changed));
}

Result<Project> with_bar(const Held& held, double bar) {
    return edits::change_mount_everywhere(held.project, held.mount.id,
                                          [bar](Mount& mount) { mount.bar = bar; });
}

using Change = Result<Project> (*)(const Held&, double);

/// mm by which the edge goes where the measure grows by 1 mm; 0 where that cannot be told.
double rate_of(const Held& held, Change change, double measure) {
    const auto more = change(held, measure + 1);
    const Piece* piece = more ? wall::find(*more, held.piece.id) : nullptr;
    const auto design = piece == nullptr ? std::nullopt : mounts::design_of(*more, *piece);
    return design ? edge_of(*design, held.part) - edge_of(held.design, held.part) : 0;
}

/// The measure that brings the edge under the hand, in whole steps, from 0 to `most`.
double measure_at(const Held& held, const MountPull& pull, Change change, double now, double most) {
    constexpr double kStuck = 0.05;
    const double rate = rate_of(held, change, now);
    const double by = held.part.x != 0 ? pull.by.x : pull.by.y;
    const double wanted = std::abs(rate) < kStuck ? now : now + by / rate;
    const double step = hand_step(held.project.unit);
    const double stepped = pull.free ? wanted : std::round(wanted / step) * step;
    return std::clamp(stepped, 0.0, most);
}

/// The most that leaves something of every window.
double overlap_limit(const Held& held) {
    double least = held.design.blank.width;
    for (const mounts::LaidPrint& print : held.design.prints)
        least = std::min({least, print.place.width(), print.place.height()});
    return std::max(0.0, least / 2 - 1);
}

MountDragged pull_overlap(const Held& held, const MountPull& pull) {
    const double overlap =
        measure_at(held, pull, with_overlap, overlap_now(held), overlap_limit(held));
    return {with_overlap(held, overlap),
            fmt::format("Change the overlap of {}", wall::title_of(held.piece)),
            fmt::format("Overlap {}", units::format_length(overlap, held.project.unit)),
            {}};
}

MountDragged pull_bar(const Held& held, const MountPull& pull) {
    const double most = std::max(held.design.blank.width, held.design.blank.height);
    const double bar = measure_at(held, pull, with_bar, held.mount.bar, most);
    return {with_bar(held, bar),
            fmt::format("Change the bars of {}", wall::title_of(held.piece)),
            fmt::format("Bar {}", units::format_length(bar, held.project.unit)),
            {}};
}

}  // namespace

MountDragged pull_mount(const Project& project, const wall::PieceId& piece, const MountPart& part,
                        const MountPull& pull) {
    const Held held = hold(project, piece, part);
    if (!part.is_edge())
        return pull_window(held, pull);
    return is_inner(held) ? pull_bar(held, pull) : pull_overlap(held, pull);
}

}  // namespace wallwright::desk
