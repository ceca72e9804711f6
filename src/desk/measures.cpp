#include "desk/measures.h"

#include "desk/axes.h"
#include "spacing/group.h"
#include "wall/middle.h"
#include "wall/this_side.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace wallwright::desk {

namespace {

using geometry::Point;
using geometry::Polygon;
using geometry::Rect;
using geometry::Segment;
using geometry::Wall;
using spacing::Axis;
using wall::Project;

constexpr double kLeast = 0.05;  // mm: less is not worth a figure

LiveMeasure measure(const Project& project, const Segment<Wall>& line) {
    const double length = geometry::distance(line.from, line.to);
    return {line, units::format_number(length, project.unit)};
}

/// What a rectangle may face; never one of those that move.
std::vector<Rect<Wall>> neighbours(const Project& project,
                                   const std::vector<wall::PieceId>& moving) {
    std::vector<Rect<Wall>> all;
    for (const wall::Placed& piece : wall::placed_pieces(project))
        if (std::ranges::count(moving, piece.id) == 0)
            all.push_back(piece.place);
    for (const wall::Furniture& one : project.room.furniture)
        all.push_back(one.place);
    for (const wall::Fixture* one : wall::fixtures_here(project.room))
        all.push_back(one->place);
    return all;
}

/// One of the four ways to look from a rectangle: along an axis, up it or down.
struct Look {
    Axis axis = Axis::horizontal;
    bool up = false;
};

/// How far ahead the other begins, in mm; negative when it is not ahead.
double ahead(const Look& look, const Rect<Wall>& place, const Rect<Wall>& other) {
    return look.up ? low(other, look.axis) - high(place, look.axis)
                   : low(place, look.axis) - high(other, look.axis);
}

/// Where the outline is crossed first when looking from the middle of the rectangle's side.
std::optional<Rect<Wall>> edge_ahead(const Look& look, const Rect<Wall>& place,
                                     const Polygon& outline) {
    const Axis across = other_axis(look.axis);
    const double level = along(across, place.centre());
    std::optional<Rect<Wall>> nearest;
    for (std::size_t i = 0; i < outline.corners.size(); ++i) {
        const auto [a, b] = geometry::side(outline, i);
        const double from = along(across, a) - level;
        const double to = along(across, b) - level;
        if ((from > 0) == (to > 0))
            continue;
        const double at =
            along(look.axis, a) + (along(look.axis, b) - along(look.axis, a)) * from / (from - to);
        const Point<Wall> point = point_on(look.axis, at, level);
        const Rect<Wall> met{point, point};
        const double distance = ahead(look, place, met);
        if (distance >= 0 && (!nearest || distance < ahead(look, place, *nearest)))
            nearest = met;
    }
    return nearest;
}

/// The nearest that is faced, or the wall's edge where that is nearer.
std::optional<Rect<Wall>> faced(const Look& look, const Rect<Wall>& place,
                                const std::vector<Rect<Wall>>& all, const Polygon& outline) {
    std::optional<Rect<Wall>> nearest = edge_ahead(look, place, outline);
    for (const Rect<Wall>& one : all) {
        const double distance = ahead(look, place, one);
        if (distance < 0 || overlap(other_axis(look.axis), place, one) <= geometry::kLengthEps)
            continue;
        if (!nearest || distance < ahead(look, place, *nearest))
            nearest = one;
    }
    return nearest;
}

std::optional<LiveMeasure> to_centre_line(const Project& project, const wall::PieceId& piece) {
    const std::vector<wall::Placed> placed = wall::placed_pieces(project);
    for (const spacing::Group& group :
         spacing::find_groups(placed, spacing::group_reach(project.style.gap))) {
        if (std::ranges::count(group.pieces, piece) == 0)
            continue;
        const Point<Wall> centre = group.bounds.centre();
        const double above =
            wall::middle_above_floor(project, group.pieces) - project.style.centre_height;
        if (std::abs(above) < kLeast)
            return std::nullopt;
        LiveMeasure off = measure(project, {centre, {centre.x, centre.y - above}});
        off.figure += above > 0 ? " above the centre line" : " below the centre line";
        return off;
    }
    return std::nullopt;
}

}  // namespace

std::vector<LiveMeasure> measures_around(const Project& project,
                                         const std::vector<wall::PieceId>& moving,
                                         const Rect<Wall>& place) {
    std::vector<LiveMeasure> measures;
    const std::vector<Rect<Wall>> all = neighbours(project, moving);
    for (const Axis axis : {Axis::horizontal, Axis::vertical})
        for (const bool up : {false, true}) {
            const Look look{axis, up};
            const auto other = faced(look, place, all, project.room.outline);
            if (other && ahead(look, place, *other) >= kLeast)
                measures.push_back(measure(project, line_between(place, *other, axis)));
        }
    if (!moving.empty())
        if (auto centre = to_centre_line(project, moving.front()))
            measures.push_back(std::move(*centre));
    return measures;
}

std::vector<LiveMeasure> measures_of_size(const Project& project, const Rect<Wall>& place) {
    const double y = place.min.y + place.height() / 4;
    const double x = place.max.x - place.width() / 4;
    return {measure(project, {{place.min.x, y}, {place.max.x, y}}),
            measure(project, {{x, place.min.y}, {x, place.max.y}})};
}

std::vector<LiveMeasure> measures_at_corner(const Project& project, std::size_t corner) {
    const std::size_t count = project.room.outline.corners.size();
    return {measure(project, geometry::side(project.room.outline, (corner + count - 1) % count)),
            measure(project, geometry::side(project.room.outline, corner))};
}

}  // namespace wallwright::desk
