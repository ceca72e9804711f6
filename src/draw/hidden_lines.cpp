#include "draw/hidden_lines.h"

#include "draw/paths.h"

#include <algorithm>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;

const Stroke kHidden{{Ink::hidden}, 0.18, LineType::dashed};
const Stroke kSeen{{Ink::outline}, 0.25};

/// A slot that drops over the head of a screw and rests with its upper end on the neck. The usual
/// size of such a plate; common practice, no source.
Path<Wall> keyhole(Point<Wall> rest) {
    constexpr double kSlot = 2.5;  // mm, half its width
    constexpr double kHole = 5;    // mm, radius
    constexpr double kDrop = 11;   // mm from its rest to the middle of the hole
    const double x = rest.x;
    const double hole = rest.y - kDrop;
    return Pen<Wall>({x - kSlot, hole + kHole})
        .line({x - kSlot, rest.y - kSlot})
        .round({x - kSlot, rest.y}, {x, rest.y})
        .round({x + kSlot, rest.y}, {x + kSlot, rest.y - kSlot})
        .line({x + kSlot, hole + kHole})
        .round({x + kHole, hole + kHole}, {x + kHole, hole})
        .round({x + kHole, hole - kHole}, {x, hole - kHole})
        .round({x - kHole, hole - kHole}, {x - kHole, hole})
        .round({x - kHole, hole + kHole}, {x - kSlot, hole + kHole})
        .closed({std::nullopt, kHidden});
}

/// From ring to ring over what the cord rests on.
Path<Wall> cord(const hanging::Hanging& hanging, const Rect<Wall>& place,
                const wall::Hanger& hanger) {
    const double across = hanger.ring_spacing.value_or(0) / 2;
    const double rings = place.max.y - hanger.drop.value_or(0);
    std::vector<Point<Wall>> points{{place.centre().x - across, rings}};
    for (const hanging::Fixing& fixing : hanging.fixings)
        points.push_back(bearing_point(fixing));
    points.push_back({place.centre().x + across, rings});
    return lines(points, kHidden);
}

/// The hook on the rail, and its cord down to the frame and on behind it.
void add_from_rail(FixingLines& into, const hanging::Fixing& fixing, const Rect<Wall>& place) {
    const Point<Wall> rest = bearing_point(fixing);
    const Point<Wall> edge{rest.x, std::clamp(place.max.y, rest.y, fixing.at.y)};
    into.seen.push_back(box(hanging::covered_by(fixing), {std::nullopt, kSeen}));
    into.seen.push_back(line(fixing.at, edge, kSeen));
    into.hidden.push_back(line(edge, rest, kHidden));
}

void add_fixing(FixingLines& into, const hanging::Fixing& fixing, const Rect<Wall>& place) {
    const Rect<Wall> covered = hanging::covered_by(fixing);
    switch (fixing.kind) {
        case wall::FixingKind::rail_hook:
            add_from_rail(into, fixing, place);
            return;
        case wall::FixingKind::screw:
            into.hidden.push_back(ellipse(covered, {std::nullopt, kHidden}));
            return;
        case wall::FixingKind::strip_pair:
        case wall::FixingKind::nail_hook:
            into.hidden.push_back(box(covered, {std::nullopt, kHidden}));
            return;
    }
}

}  // namespace

Point<Wall> bearing_point(const hanging::Fixing& fixing) {
    return {fixing.at.x, fixing.at.y - fixing.cord};
}

FixingLines fixing_lines_of(const wall::Project& project, const hanging::Hanging& hanging) {
    FixingLines made;
    const wall::Piece* piece = wall::find(project, hanging.piece);
    const auto place = piece == nullptr ? std::nullopt : wall::place_of(project, *piece);
    if (!place || hanging.fixings.empty())
        return made;
    for (const hanging::Fixing& fixing : hanging.fixings) {
        add_fixing(made, fixing, *place);
        if (piece->hanger.type == wall::HangerType::keyholes)
            made.hidden.push_back(keyhole(bearing_point(fixing)));
    }
    if (hanging.cord)
        made.hidden.push_back(
            cord(hanging, *place, hanging::complete(piece->hanger, place->size())));
    return made;
}

}  // namespace wallwright::draw
