#include "desk/overlay.h"

#include "desk/overlay_lines.h"
#include "desk/overlay_wishes.h"
#include "draw/paths.h"

#include <algorithm>

namespace wallwright::desk {

namespace {

using draw::Ink;
using draw::LineType;
using draw::Paint;
using draw::Stroke;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;

// All in mm on paper.
constexpr double kBracketAir = 0.9;  // between a thing and its brackets
constexpr double kBracketArm = 3.2;
constexpr double kBracketShare = 0.3;  // of a thing's shorter side that an arm takes at most
constexpr double kWordAir = 0.9;       // between a bracket and the word over it
constexpr double kHandleHalf = 0.9;
constexpr double kCornerRadius = 1.1;
constexpr double kFindingAir = 1.6;
constexpr double kFindingRadius = 1.2;
constexpr double kHoverAir = 0.35;
constexpr double kBandAlpha = 0.12;

const Stroke kThin{{Ink::accent}, 0.25};
const Stroke kHandleStroke{{Ink::accent}, 0.35};

/// An L in each corner, a little outside.
void add_brackets(Overlay& overlay, const Rect<Wall>& place, Ink ink) {
    const Rect<Wall> around = place.grown(overlay.on_wall(kBracketAir));
    const double arm = std::min(overlay.on_wall(kBracketArm),
                                kBracketShare * std::min(around.width(), around.height()));
    const Stroke stroke{{ink}, 0.5};
    const auto bracket = [&](Point<Wall> corner, double right, double up) {
        overlay.add(draw::lines<Wall>(
            {{corner.x + right * arm, corner.y}, corner, {corner.x, corner.y + up * arm}}, stroke));
    };
    bracket(around.min, 1, 1);
    bracket({around.max.x, around.min.y}, -1, 1);
    bracket(around.max, -1, -1);
    bracket({around.min.x, around.max.y}, 1, -1);
}

/// Why a fixed piece would not follow the hand.
void add_state_word(Overlay& overlay, const Rect<Wall>& place, const wall::Piece& piece) {
    const Point<Wall> corner = place.grown(overlay.on_wall(kBracketAir)).max;
    draw::Text<Wall> word =
        overlay.label({corner.x, corner.y + overlay.on_wall(kWordAir)},
                      piece.state == wall::PieceState::hung ? "hangs" : "pinned");
    word.align = draw::Align::right;
    word.paint.ink = Ink::dimension;
    overlay.add(std::move(word));
}

void add_selected_piece(Overlay& overlay, const Session& session, const wall::PieceId& id,
                        const Rect<Wall>& place) {
    const wall::Piece* piece = wall::find(session.project(), id);
    const bool fixed = piece != nullptr && wall::is_fixed(*piece);
    add_brackets(overlay, place, fixed ? Ink::hidden : Ink::accent);
    if (fixed && session.selection.one_piece())
        add_state_word(overlay, place, *piece);
}

void add_handles(Overlay& overlay, const Selection& selection, const Rect<Wall>& place) {
    overlay.add(draw::box(place, {std::nullopt, kThin}));
    for (const Handle& handle : handles_of(selection)) {
        const Point<Wall> at = point_of(handle, place);
        overlay.add(draw::box(Rect<Wall>{at, at}.grown(overlay.on_wall(kHandleHalf)),
                              {Paint{Ink::paper}, kHandleStroke}));
    }
}

void add_selection(Overlay& overlay, const Session& session, const std::vector<Waiting>& waiting,
                   Step step) {
    for (const Thing& thing : session.selection.things()) {
        const auto place = seen_at(session.project(), waiting, thing);
        if (!place)
            continue;
        if (const auto* id = std::get_if<wall::PieceId>(&thing))
            add_selected_piece(overlay, session, *id, *place);
        else if (step == Step::room)
            add_handles(overlay, session.selection, *place);
        else
            add_brackets(overlay, *place, Ink::accent);
    }
}

void add_corners(Overlay& overlay, const wall::Project& project) {
    for (const Point<Wall> corner : project.room.outline.corners)
        overlay.add(draw::circle(corner, overlay.on_wall(kCornerRadius),
                                 {Paint{Ink::paper}, kHandleStroke}));
}

/// The ink of the worst finding that is about this place.
Ink finding_ink(const Session& session, const Rect<Wall>& place) {
    for (const wall::Finding& finding : session.assessment().findings)
        if (finding.place == place)
            return finding.severity == wall::Severity::stop ? Ink::stop : Ink::mind;
    return Ink::mind;
}

void add_pointed_out(Overlay& overlay, const Session& session) {
    if (!session.pointed_out)
        return;
    const Stroke stroke{{finding_ink(session, *session.pointed_out)}, 0.5, LineType::dashed};
    overlay.add(draw::rounded_box(session.pointed_out->grown(overlay.on_wall(kFindingAir)),
                                  overlay.on_wall(kFindingRadius), {std::nullopt, stroke}));
}

void add_hovered(Overlay& overlay, const Session& session, const std::vector<Waiting>& waiting,
                 const Showing& showing) {
    if (!showing.hovered || session.selection.has(*showing.hovered))
        return;
    if (const auto place = seen_at(session.project(), waiting, *showing.hovered))
        overlay.add(draw::box(place->grown(overlay.on_wall(kHoverAir)), {std::nullopt, kThin}));
}

void add_off_wall(Overlay& overlay, const Showing& showing) {
    const Stroke stroke{{Ink::accent}, 0.35, LineType::dashed};
    for (const Rect<Wall>& place : showing.off_wall)
        overlay.add(draw::box(place, {std::nullopt, stroke}));
}

void add_band(Overlay& overlay, const Showing& showing) {
    if (showing.band)
        overlay.add(draw::box(*showing.band, {Paint{Ink::accent, {}, kBandAlpha}, kThin}));
}

}  // namespace

std::vector<draw::Shape<Wall>> overlay(const Session& session, const std::vector<Waiting>& waiting,
                                       Step step, const Showing& showing, double scale) {
    Overlay overlay(session.project().room.colour, scale);
    add_pointed_out(overlay, session);
    add_hovered(overlay, session, waiting, showing);
    if (step == Step::room)
        add_corners(overlay, session.project());
    if (step == Step::arrange)
        add_wishes(overlay, session.project(), waiting);
    add_selection(overlay, session, waiting, step);
    add_off_wall(overlay, showing);
    for (const Guide& guide : showing.guides)
        add_guide(overlay, guide);
    for (const LiveMeasure& measure : showing.measures)
        add_measure(overlay, measure);
    add_band(overlay, showing);
    return overlay.take();
}

}  // namespace wallwright::desk
