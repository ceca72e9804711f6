#include "arrange/grow.h"
#include "desk/overlay_lines.h"
#include "desk/plans_overlay.h"
#include "draw/paths.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace wallwright::desk {

namespace {

using draw::Ink;
using draw::LineType;
using draw::Stroke;
using geometry::Point;
using geometry::Rect;
using geometry::Vec;
using geometry::Wall;

// All in mm on paper.
constexpr double kAir = 2;       // between the ends of the curve and what it leads from and to
constexpr double kShortest = 8;  // a curve that is worth drawing
constexpr double kArrow = 1.8;   // each side of the head
constexpr double kRing = 1.6;    // radius around a point
constexpr double kWordAir = 1.5;
constexpr double kRise = 0.22;  // of the curve over its chord, as a share of that
constexpr double kHigh = 0.85;  // where it leads sideways, up what both ends share in height

const Stroke kDotted{{Ink::accent}, 0.5, LineType::dotted};
const Stroke kSolid{{Ink::accent}, 0.35};

/// Where two spans come nearest: their ends, or so far up what they share, 0 to 1.
std::pair<double, double> nearest(double a_least, double a_most, double b_least, double b_most,
                                  double share) {
    if (a_most < b_least)
        return {a_most, b_least};
    if (b_most < a_least)
        return {a_least, b_most};
    const double least = std::max(a_least, b_least);
    const double shared = least + share * (std::min(a_most, b_most) - least);
    return {shared, shared};
}

struct Way {
    Point<Wall> from;
    Point<Wall> to;
    [[nodiscard]] double length() const { return geometry::distance(from, to); }
};

/// The shortest from one to the other.
Way way_between(const Rect<Wall>& a, const Rect<Wall>& b) {
    const auto [from_x, to_x] = nearest(a.left(), a.right(), b.left(), b.right(), 0.5);
    const auto [from_y, to_y] = nearest(a.bottom(), a.top(), b.bottom(), b.top(), kHigh);
    return {{from_x, from_y}, {to_x, to_y}};
}

std::optional<Way> shortest_way(const wall::Project& project, const Rect<Wall>& target) {
    std::optional<Way> shortest;
    for (const wall::Placed& placed : wall::placed_pieces(project)) {
        const Way way = way_between(placed.place, target);
        if (!shortest || way.length() < shortest->length())
            shortest = way;
    }
    return shortest;
}

void add_arrow(Overlay& overlay, Point<Wall> tip, Vec<Wall> along) {
    const double reach = overlay.on_wall(kArrow) / std::max(geometry::length(along), 1e-9);
    const Vec<Wall> back = -reach * along;
    const Vec<Wall> aside{-0.5 * back.y, 0.5 * back.x};
    overlay.add(draw::lines<Wall>({tip + back + aside, tip, tip + back + -1 * aside}, kSolid));
}

/// Beside the top of the curve, or as little higher as it takes to be clear of everything; not at
/// all where that is too far to be read with it.
void add_words(Overlay& overlay, Point<Wall> top, bool is_beside, const std::string& words) {
    constexpr int kTries = 12;
    const double air = overlay.on_wall(kWordAir);
    std::vector<draw::Text<Wall>> choices;
    if (is_beside) {
        choices.push_back(overlay.label({top.x + air, top.y}, words));
        choices.back().align = draw::Align::left;
    }
    for (int i = 0; i < kTries; ++i)
        choices.push_back(overlay.label({top.x, top.y + (1 + i) * air}, words));
    overlay.add_if_free(choices);
}

/// Bent upward, or to the right where it leads up or down.
void add_curve(Overlay& overlay, const Way& way, const std::string& words) {
    const Vec<Wall> chord = way.to - way.from;
    const double length = geometry::length(chord);
    const Vec<Wall> along = (1 / length) * chord;
    const bool is_leftward = along.x < 0;
    const Vec<Wall> up{is_leftward ? along.y : -along.y, is_leftward ? -along.x : along.x};
    const Point<Wall> from = way.from + overlay.on_wall(kAir) * along;
    const Point<Wall> to = way.to + -overlay.on_wall(kAir) * along;
    // A cubic curve rises to 3/4 of its control points' height.
    const Vec<Wall> rise = (kRise * length / 0.75) * up;
    const Point<Wall> second = from + 0.75 * (to - from) + rise;
    overlay.add(
        draw::Pen<Wall>(from).curve(from + 0.25 * (to - from) + rise, second, to).drawn(kDotted));
    add_arrow(overlay, to, to - second);
    const bool is_steep = std::abs(along.y) > std::abs(along.x);
    add_words(overlay, from + 0.5 * (to - from) + 0.75 * rise, is_steep, words);
}

/// So that the words do not cover what there is to see.
void keep_clear_of_all(Overlay& overlay, const wall::Project& project, const WallShapes& under,
                       double scale) {
    for (const draw::Shape<Wall>& shape : under)
        if (const auto* const text = std::get_if<draw::Text<Wall>>(&shape))
            overlay.keep_clear(draw::estimated_box(*text, scale));
    for (const wall::Placed& placed : wall::placed_pieces(project))
        overlay.keep_clear(placed.place);
    for (const wall::Furniture& furniture : project.room.furniture)
        overlay.keep_clear(furniture.place);
    for (const wall::Fixture& fixture : project.room.fixtures)
        overlay.keep_clear(fixture.place);
}

/// What cannot be seen on the wall by itself.
void add_place(Overlay& overlay, const wall::Target& target, const Rect<Wall>& place) {
    if (std::holds_alternative<Rect<Wall>>(target))
        overlay.add(draw::box(place, {std::nullopt, kDotted}));
    else if (std::holds_alternative<Point<Wall>>(target))
        overlay.add(draw::circle(place.centre(), overlay.on_wall(kRing),
                                 {draw::Paint{Ink::paper}, kSolid}));
}

}  // namespace

WallShapes target_overlay(const Session& session, const WallShapes& under, double scale) {
    const wall::Project& project = session.project();
    Overlay overlay(project.room.colour, scale);
    const auto place = project.target ? arrange::place_of(project.room, *project.target)
                                      : std::optional<Rect<Wall>>();
    if (!place)
        return {};
    keep_clear_of_all(overlay, project, under, scale);
    add_place(overlay, *project.target, *place);
    const auto way = shortest_way(project, *place);
    if (way && way->length() > overlay.on_wall(kShortest))
        add_curve(overlay, *way,
                  fmt::format("grows toward {}", title_of(project, *project.target, project.unit)));
    return overlay.take();
}

}  // namespace wallwright::desk
