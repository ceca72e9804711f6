#include "desk/pointer_tool.h"

#include <algorithm>
#include <utility>

namespace wallwright::desk {

namespace {

using geometry::Rect;
using geometry::Wall;

constexpr double kGrabPixels = 8;   // beside a handle or corner that still takes hold of it
constexpr double kSnapPixels = 8;   // within which a snap takes hold
constexpr double kStartPixels = 4;  // that the hand goes before a press becomes a drag

bool is_draggable(const wall::Project& project, const Thing& thing) {
    const auto* id = std::get_if<wall::PieceId>(&thing);
    const wall::Piece* piece = id == nullptr ? nullptr : wall::find(project, *id);
    return piece == nullptr || !wall::is_fixed(*piece);
}

Cursor cursor_of(const Handle& handle) {
    if (handle.x != 0 && handle.y != 0)
        return Cursor::resize_both;
    return handle.x != 0 ? Cursor::resize_across : Cursor::resize_up;
}

Cursor cursor_for(const wall::Project& project, const std::optional<Hit>& hit) {
    if (!hit)
        return Cursor::arrow;
    if (const auto* handle = std::get_if<Handle>(&*hit))
        return cursor_of(*handle);
    const auto* thing = std::get_if<Thing>(&*hit);
    return thing == nullptr || is_draggable(project, *thing) ? Cursor::move : Cursor::arrow;
}

Pull pull_from(const PointerEvent& from, const PointerEvent& event, units::LengthUnit unit) {
    return {event.at - from.at, event.alt ? kNoSnap : kSnapPixels * event.mm_per_pixel, event.shift,
            hand_step(unit)};
}

/// The pieces first and then what else is in the list, each once.
std::vector<wall::PieceId> joined(std::vector<wall::PieceId> pieces,
                                  const std::vector<wall::PieceId>& more) {
    for (const wall::PieceId& id : more)
        if (std::ranges::find(pieces, id) == pieces.end())
            pieces.push_back(id);
    return pieces;
}

}  // namespace

void PointerTool::press(Session& session, const std::vector<Waiting>& waiting, Step step,
                        const PointerEvent& event) {
    if (is_busy())
        cancel(session);
    session.end_burst();
    showing_ = {};
    Pressed pressed{event, hit_test(session.project(), waiting, session.selection, step, event.at,
                                    kGrabPixels * event.mm_per_pixel)};
    cursor_ = cursor_for(session.project(), pressed.hit);
    const Thing* thing = pressed.hit ? std::get_if<Thing>(&*pressed.hit) : nullptr;
    if (thing != nullptr) {
        pressed.was_selected = session.selection.has(*thing);
        if (!pressed.was_selected && event.shift)
            session.selection.toggle(*thing);
        else if (!pressed.was_selected)
            session.selection.set(*thing);
    }
    state_ = std::move(pressed);
}

void PointerTool::move(Session& session, const std::vector<Waiting>& waiting, Step step,
                       const PointerEvent& event) {
    if (!is_busy())
        return hover(session, waiting, step, event);
    if (const auto* pressed = std::get_if<Pressed>(&state_)) {
        const double gone = geometry::distance(event.at, pressed->from.at);
        if (gone < kStartPixels * event.mm_per_pixel)
            return;
        state_ = begin(session, waiting, *pressed);
    }
    if (auto* drag = std::get_if<Drag>(&state_))
        follow_drag(session, *drag, event);
    else if (const auto* band = std::get_if<Band>(&state_))
        follow_band(session, waiting, *band, event);
    else
        cursor_ = Cursor::arrow;
}

void PointerTool::release(Session& session, const PointerEvent& event) {
    if (const auto* pressed = std::get_if<Pressed>(&state_)) {
        click(session, *pressed);
    } else if (auto* drag = std::get_if<Drag>(&state_)) {
        follow_drag(session, *drag, event);
        session.keep_preview(drag->label);
    }
    finish();
}

void PointerTool::cancel(Session& session) {
    if (std::holds_alternative<Drag>(state_))
        session.drop_preview();
    if (auto* band = std::get_if<Band>(&state_)) {
        session.selection = std::move(band->before);
        session.selection.keep_only_in(session.project());
    }
    finish();
}

void PointerTool::hover(const Session& session, const std::vector<Waiting>& waiting, Step step,
                        const PointerEvent& event) {
    const auto hit = hit_test(session.project(), waiting, session.selection, step, event.at,
                              kGrabPixels * event.mm_per_pixel);
    cursor_ = cursor_for(session.project(), hit);
    showing_ = {};
    if (const auto* thing = hit ? std::get_if<Thing>(&*hit) : nullptr)
        showing_.hovered = *thing;
}

PointerTool::State PointerTool::begin(Session& session, const std::vector<Waiting>& waiting,
                                      const Pressed& pressed) {
    const PointerEvent& from = pressed.from;
    if (!pressed.hit)
        return Band{from, session.selection};
    session.notice.reset();
    if (const auto* thing = std::get_if<Thing>(&*pressed.hit))
        return begin_thing(session, waiting, from, *thing);
    if (const auto* corner = std::get_if<Corner>(&*pressed.hit)) {
        const auto& corners = session.kept().room.outline.corners;
        if (corner->index < corners.size())
            return Drag{from, CornerDrag{corner->index, corners[corner->index]}, {}, {}};
        return Stuck{};
    }
    const auto& handle = std::get<Handle>(*pressed.hit);
    if (const auto place = place_of(session.kept(), handle.thing))
        return Drag{from, ResizeDrag{handle, *place}, {}, {}};
    return Stuck{};
}

PointerTool::State PointerTool::begin_thing(Session& session, const std::vector<Waiting>& waiting,
                                            const PointerEvent& from, const Thing& thing) {
    const auto* held = std::get_if<wall::PieceId>(&thing);
    if (held == nullptr) {
        const auto place = place_of(session.kept(), thing);
        return place ? State{Drag{from, ThingDrag{thing, *place}, {}, {}}} : State{Stuck{}};
    }
    const bool with_selection = session.selection.has(thing);
    PieceDrag drag =
        take_hold(session.kept(), waiting,
                  with_selection ? session.selection.pieces() : std::vector{*held}, *held);
    session.notice = drag.notice;
    if (drag.pieces.empty())
        return Stuck{};
    const std::optional<Notice> notice = drag.notice;
    return Drag{from, std::move(drag), {}, notice};
}

void PointerTool::follow_drag(Session& session, Drag& drag, const PointerEvent& event) {
    Dragged dragged = std::visit(
        [&](const auto& what) {
            return follow(session.kept(), what, pull_from(drag.from, event, session.kept().unit));
        },
        drag.what);
    showing_ = std::move(dragged.showing);
    if (dragged.project)
        drag.label = std::move(dragged.label);
    session.notice = drag.notice;
    session.preview(std::move(dragged.project));
}

void PointerTool::follow_band(Session& session, const std::vector<Waiting>& waiting,
                              const Band& band, const PointerEvent& event) {
    const Rect<Wall> area =
        hull(Rect<Wall>{band.from.at, band.from.at}, Rect<Wall>{event.at, event.at});
    showing_.band = area;
    const std::vector<wall::PieceId> touched = pieces_in(session.project(), waiting, area);
    session.selection.set(band.from.shift ? joined(band.before.pieces(), touched) : touched);
}

void PointerTool::click(Session& session, const Pressed& pressed) {
    if (!pressed.hit) {
        if (pressed.from.shift)
            return;
        session.selection.clear();
        session.pointed_out.reset();
        return;
    }
    const auto* thing = std::get_if<Thing>(&*pressed.hit);
    if (thing == nullptr || !pressed.was_selected)
        return;
    if (pressed.from.shift)
        session.selection.toggle(*thing);
    else
        session.selection.set(*thing);
}

void PointerTool::finish() {
    state_ = Idle{};
    showing_ = {};
    cursor_ = Cursor::arrow;
}

}  // namespace wallwright::desk
