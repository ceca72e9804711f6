#include "desk/bench/mount_tool.h"

#include "edits/mounts.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace wallwright::desk {

namespace {

using mounts::MountDesign;
using wall::Mount;
using wall::PieceId;
using wall::WindowOrder;

constexpr double kGrabPixels = 7;   // beside an edge that still takes hold of it
constexpr double kSnapPixels = 6;   // within which a snap takes hold
constexpr double kStartPixels = 4;  // that the hand goes before a press becomes a drag

std::optional<MountDesign> design_in(const wall::Project& project, const PieceId& id) {
    const wall::Piece* piece = wall::find(project, id);
    return piece == nullptr ? std::nullopt : mounts::design_of(project, *piece);
}

std::optional<MountPart> part_under(const wall::Project& project, const PieceId& piece,
                                    const MountEvent& event) {
    const auto design = design_in(project, piece);
    return design ? part_at(*design, event.at, kGrabPixels * event.mm_per_pixel) : std::nullopt;
}

/// As the windows lie: in a column where their middles are further apart up and down.
WindowOrder order_of(const MountDesign& design) {
    geometry::Rect<mounts::Front> middles{window_at(design, 0).centre(),
                                          window_at(design, 0).centre()};
    for (std::size_t i = 1; i < window_count(design); ++i) {
        const auto middle = window_at(design, i).centre();
        middles = hull(middles, geometry::Rect<mounts::Front>{middle, middle});
    }
    return middles.height() > middles.width() ? WindowOrder::column : WindowOrder::row;
}

}  // namespace

void MountTool::press(Session& session, const PieceId& piece, const MountEvent& event) {
    if (is_busy())
        cancel(session);
    session.end_burst();
    showing_ = {};
    showing_.part = part_under(session.kept(), piece, event);
    state_ = Pressed{piece, event, showing_.part};
}

void MountTool::move(Session& session, const PieceId& piece, const MountEvent& event) {
    if (!is_busy())
        return hover(session, piece, event);
    if (const auto* pressed = std::get_if<Pressed>(&state_)) {
        const double gone = geometry::distance(event.at, pressed->from.at);
        if (!pressed->part || gone < kStartPixels * event.mm_per_pixel)
            return;
        session.notice.reset();
        state_ = Drag{pressed->piece, pressed->from, *pressed->part, {}};
    }
    if (auto* drag = std::get_if<Drag>(&state_))
        follow(session, *drag, event);
}

void MountTool::release(Session& session, const MountEvent& event) {
    if (auto* drag = std::get_if<Drag>(&state_)) {
        follow(session, *drag, event);
        session.keep_preview(drag->label);
    }
    finish();
}

void MountTool::cancel(Session& session) {
    if (std::holds_alternative<Drag>(state_))
        session.drop_preview();
    finish();
}

void MountTool::leave() {
    if (!is_busy())
        showing_ = {};
}

Cursor MountTool::cursor() const {
    if (!showing_.part)
        return Cursor::arrow;
    if (showing_.part->x != 0)
        return Cursor::resize_across;
    return showing_.part->y != 0 ? Cursor::resize_up : Cursor::move;
}

void MountTool::hover(const Session& session, const PieceId& piece, const MountEvent& event) {
    showing_ = {};
    showing_.part = part_under(session.project(), piece, event);
    if (!showing_.part)
        return;
    showing_.words = showing_.part->is_edge()
                         ? "Drag the edge to change the overlap, or the bar beside it"
                         : "Drag to place the window by hand; double click to centre it again";
}

void MountTool::follow(Session& session, Drag& drag, const MountEvent& event) {
    const auto design = design_in(session.kept(), drag.piece);
    if (!design || drag.part.window >= window_count(*design))
        return;
    const MountPull pull{event.at - drag.from.at, event.alt, kSnapPixels * event.mm_per_pixel};
    MountDragged dragged = pull_mount(session.kept(), drag.piece, drag.part, pull);
    if (dragged.project)
        drag.label = std::move(dragged.label);
    showing_ = {drag.part, true, std::move(dragged.guides), std::move(dragged.words)};
    session.preview(std::move(dragged.project));
}

void MountTool::finish() {
    state_ = Idle{};
    showing_ = {};
}

bool is_by_hand(const Mount& mount) {
    return mount.by_hand.has_value() ||
           (mount.order == WindowOrder::by_hand && !mount.openings.empty());
}

void centre_windows(Session& session, const PieceId& id) {
    const auto design = design_in(session.kept(), id);
    if (!design)
        return;
    const wall::Piece& piece = *wall::find(session.kept(), id);
    const Mount& mount = *wall::find(session.kept(), *piece.mount);
    if (!is_by_hand(mount))
        return;
    const WindowOrder order = mount.order == WindowOrder::by_hand ? order_of(*design) : mount.order;
    session.apply(fmt::format("Centre the window of {}", wall::title_of(piece)),
                  edits::release_windows(session.kept(), mount.id, order));
}

}  // namespace wallwright::desk
