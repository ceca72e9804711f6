#include "desk/bench/mount_picture.h"

#include "desk/overlay_lines.h"
#include "draw/mount_back.h"
#include "draw/mount_front.h"
#include "draw/paths.h"

#include <algorithm>

namespace wallwright::desk {

namespace {

using draw::Ink;
using draw::Stroke;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;
using mounts::Front;

const Stroke kHeld{{Ink::accent}, 0.7};
const Stroke kOffered{{Ink::accent}, 0.5};

draw::WallDrawing frame_alone(const Session& session, const wall::Piece& piece) {
    constexpr double kShadowRoom = 12;  // mm
    const Rect<Wall> place = Rect<Wall>::at({0, 0}, wall::outside_size(session.project(), piece));
    draw::WallDrawing drawing;
    drawing.extent = place.grown(kShadowRoom);
    draw::add_framed(drawing.shapes, session.project(), piece, place,
                     {true, session.picture_folder()});
    return drawing;
}

void draw_design(MountPicture& picture, const Session& session, const wall::Piece& piece) {
    const draw::BenchOptions options{picture.scale, true, {true, session.picture_folder()}};
    const mounts::MountDesign& design = *picture.design;
    picture.blank = draw::in_mount_front(session.project(), piece, design,
                                         Rect<Front>::at({0, 0}, design.blank));
    picture.drawing =
        picture.side == MountSide::front
            ? draw::mount_front(session.project(), piece, design, options)
            : draw::mount_back(design, picture.layer, session.project().unit, options);
}

Point<Wall> on_wall(const MountPicture& picture, Point<Front> at) {
    return on_drawing(picture, Rect<Front>{at, at}).min;
}

draw::Path<Wall> outline_of(const Rect<Wall>& place, const MountPart& part, const Stroke& stroke) {
    if (part.x != 0) {
        const double x = part.x < 0 ? place.min.x : place.max.x;
        return draw::line<Wall>({x, place.min.y}, {x, place.max.y}, stroke);
    }
    if (part.y != 0) {
        const double y = part.y < 0 ? place.max.y : place.min.y;
        return draw::line<Wall>({place.min.x, y}, {place.max.x, y}, stroke);
    }
    return draw::polygon<Wall>(
        {place.min, {place.max.x, place.min.y}, place.max, {place.min.x, place.max.y}},
        {std::nullopt, stroke});
}

/// How far one of several windows is from the lip at its left and above it; what is drawn says it
/// of all of them together.
void add_way_from_lip(Overlay& over, const MountPicture& picture, const Rect<Wall>& place) {
    const mounts::Borders& lip = picture.design->lip;
    const Point<Wall> middle = place.centre();
    const double left = picture.blank.min.x + lip.left;
    const double top = picture.blank.max.y - lip.top;
    const auto figure = [&picture](double mm) { return units::format_number(mm, picture.unit); };
    if (place.min.x > left)
        add_measure(over,
                    {{{left, middle.y}, {place.min.x, middle.y}}, figure(place.min.x - left)});
    if (place.max.y < top)
        add_measure(over, {{{middle.x, place.max.y}, {middle.x, top}}, figure(top - place.max.y)});
}

}  // namespace

bool refresh(MountPicture& picture, const Session& session, const wall::PieceId& id,
             const Bench& bench, double scale) {
    const bool is_same =
        picture.version == session.version() && picture.piece == id && picture.scale == scale;
    const std::size_t last = picture.design ? picture.design->layers.size() - 1 : std::size_t{0};
    const MountSide side = picture.design ? bench.side : MountSide::front;
    if (is_same && picture.side == side && picture.layer == std::min(bench.layer, last))
        return false;
    const wall::Piece& piece = *wall::find(session.project(), id);
    picture.version = session.version();
    picture.piece = id;
    picture.scale = scale;
    picture.unit = session.project().unit;
    picture.design = mounts::design_of(session.project(), piece);
    picture.side = picture.design ? bench.side : MountSide::front;
    picture.layer = picture.design ? std::min(bench.layer, picture.design->layers.size() - 1) : 0;
    if (picture.design)
        draw_design(picture, session, piece);
    else
        picture.drawing = frame_alone(session, piece);
    return true;
}

Point<Front> on_blank(const MountPicture& picture, Point<Wall> at) {
    return {at.x - picture.blank.min.x, picture.blank.max.y - at.y};
}

Rect<Wall> on_drawing(const MountPicture& picture, const Rect<Front>& place) {
    const Point<Wall> corner{picture.blank.min.x, picture.blank.max.y};
    return {{corner.x + place.min.x, corner.y - place.max.y},
            {corner.x + place.max.x, corner.y - place.min.y}};
}

std::vector<draw::Shape<Wall>> overlay(const MountPicture& picture, const MountShowing& showing) {
    const bool has_part = picture.design && showing.part && picture.side == MountSide::front &&
                          showing.part->window < window_count(*picture.design);
    if (!has_part)
        return {};
    Overlay over(picture.design->layers.front().colour, picture.scale);
    const Rect<Wall> place = on_drawing(picture, window_at(*picture.design, showing.part->window));
    over.add(outline_of(place, *showing.part, showing.is_held ? kHeld : kOffered));
    for (const MountGuide& guide : showing.guides)
        add_guide(over, {{on_wall(picture, guide.from), on_wall(picture, guide.to)},
                         guide.words,
                         SnapKind::edges});
    if (showing.is_held && showing.part->is_edge())
        over.add_first_free({over.label(place.centre(), showing.words)});
    else if (showing.is_held && window_count(*picture.design) > 1)
        add_way_from_lip(over, picture, place);
    return over.take();
}

}  // namespace wallwright::desk
