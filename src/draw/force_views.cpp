#include "draw/force_views.h"

#include "draw/dimensions.h"
#include "draw/force_arrows.h"
#include "draw/paths.h"
#include "units/mass.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;
using hanging::Force;
using hanging::ForceKind;
using hanging::FreeBody;

// mm on paper.
constexpr double kLongest = 14;         // of the strongest force's arrow
constexpr double kShortest = 9;         // where the frame is too low for that
constexpr double kLongestShare = 0.42;  // of the frame's height
constexpr double kDepthLeast = 11;      // that the frame's depth is drawn at
constexpr double kWallThick = 5;
constexpr double kPoint = 0.8;      // radius of the points where it hangs
constexpr double kGravity = 1.3;    // radius of the sign for the centre of gravity
constexpr double kAbove = 9;        // above the frame, where a long cord is broken off
constexpr double kLeanDegrees = 7;  // drawn for any lean: by how much is not known
constexpr double kWordSize = 1.8;

std::string figure_of(const Easel& easel, double newton) {
    return units::format_force({newton}, easel.unit);
}

/// No figure may stand across the frame's outline.
void take_outline(Easel& easel, const Rect<Wall>& frame) {
    const double air = easel.on_wall(0.3);
    const auto edge = [&](Point<Wall> from, Point<Wall> to) {
        easel.room.take(Rect<Wall>{from, to}.grown(air));
    };
    edge(frame.min, {frame.max.x, frame.min.y});
    edge({frame.min.x, frame.max.y}, frame.max);
    edge(frame.min, {frame.min.x, frame.max.y});
    edge({frame.max.x, frame.min.y}, frame.max);
}

void add_frame(Easel& easel, const Rect<Wall>& frame) {
    easel.add(box(frame, {Paint{Ink::floor, {}, 0.35}, Stroke{{Ink::outline}, 0.35}}));
    take_outline(easel, frame);
}

/// A circle with two of its quarters filled.
void add_centre_of_gravity(Easel& easel, Point<Wall> at) {
    const double r = easel.on_wall(kGravity);
    easel.add(circle(at, r, {Paint{Ink::paper}, Stroke{{Ink::outline}, 0.25}}));
    for (const double side : {1.0, -1.0})
        easel.add(Pen<Wall>(at)
                      .line({at.x + side * r, at.y})
                      .round({at.x + side * r, at.y + side * r}, {at.x, at.y + side * r})
                      .closed({Paint{Ink::outline}, std::nullopt}));
    easel.room.take(Rect<Wall>{at, at}.grown(r));
}

/// As far as it is near the frame; a break in the line says that there is more.
void add_strand(Easel& easel, Point<Wall> from, Point<Wall> to, double top) {
    const double most = top + easel.on_wall(kAbove);
    const Stroke stroke{{Ink::hidden}, 0.35};
    if (to.y > most) {
        const double share = (most - from.y) / (to.y - from.y);
        to = from + share * (to - from);
        const double half = easel.on_wall(1);
        easel.add(line<Wall>({to.x - half, to.y - 0.5 * half}, {to.x + half, to.y + 0.5 * half},
                             {{Ink::hidden}, 0.25}));
    }
    easel.add(line<Wall>(from, to, stroke));
}

void add_point(Easel& easel, Point<Wall> at) {
    easel.add(circle(at, easel.on_wall(kPoint), {Paint{Ink::paper}, Stroke{{Ink::accent}, 0.25}}));
}

/// Where it hangs, each point once.
std::vector<Point<Wall>> bearing_points(const FreeBody& body) {
    std::vector<Point<Wall>> points;
    for (const Force& force : body.forces)
        if (force.kind == ForceKind::carried)
            points.push_back({force.at.x, force.at.y});
    return points;
}

bool in_plane(const geometry::Vec<Wall>& newton) {
    constexpr double kNothing = 1e-6;
    return std::hypot(newton.x, newton.y) > kNothing;
}

/// Where more than `most` arrows of a kind say the same, the first says it for all: many strips,
/// one below the other, leave no room for more.
void say_once(std::vector<Arrow>& arrows, ForceKind kind, std::ptrdiff_t most) {
    Arrow* first = nullptr;
    const auto says_the_same = [&first, kind](const Arrow& one) {
        return one.kind == kind && first != nullptr && one.figure == first->figure;
    };
    for (Arrow& one : arrows)
        if (first == nullptr && one.kind == kind)
            first = &one;
    if (std::ranges::count_if(arrows, says_the_same) <= most)
        return;
    for (Arrow& one : arrows)
        if (&one != first && says_the_same(one))
            one.figure.clear();
    first->figure = fmt::format("each {}", first->figure);
}

std::vector<Arrow> front_arrows(const Easel& easel, const FreeBody& body) {
    std::vector<Arrow> arrows;
    for (const Force& force : body.forces) {
        const geometry::Vec<Wall> newton{force.newtons.x, force.newtons.y};
        if (in_plane(newton))
            arrows.push_back({force.kind,
                              {force.at.x, force.at.y},
                              newton,
                              figure_of(easel, std::hypot(newton.x, newton.y))});
    }
    say_once(arrows, ForceKind::carried, 2);
    return arrows;
}

/// What the side view sees of the forces of one kind at one height.
struct FromSide {
    ForceKind kind;
    double y = 0;
    double z = 0;
    double up = 0;
    double out = 0;
};

std::vector<FromSide> from_side(const FreeBody& body) {
    std::vector<FromSide> all;
    for (const Force& force : body.forces) {
        auto same = std::ranges::find_if(all, [&force](const FromSide& one) {
            return one.kind == force.kind && std::abs(one.y - force.at.y) < 1 &&
                   std::abs(one.z - force.at.z) < 1;
        });
        if (same == all.end())
            same = all.insert(all.end(), {force.kind, force.at.y, force.at.z});
        same->up += force.newtons.y;
        same->out += force.newtons.z;
    }
    return all;
}

/// Of the side view: from heights and depths to the drawing.
struct SideMap {
    double wall = 0;     ///< x of the wall's face.
    double stretch = 1;  ///< By which depths are drawn larger.

    [[nodiscard]] Point<Wall> operator()(double out, double up) const {
        return {wall + stretch * out, up};
    }
};

/// The weight has its figure in the front view.
std::vector<Arrow> side_arrows(const Easel& easel, const FreeBody& body, const SideMap& map) {
    std::vector<Arrow> arrows;
    for (const FromSide& one : from_side(body)) {
        const geometry::Vec<Wall> newton{one.out, one.up};
        if (!in_plane(newton))
            continue;
        const std::string figure = figure_of(easel, std::hypot(newton.x, newton.y));
        arrows.push_back(
            {one.kind, map(one.z, one.y), newton, one.kind == ForceKind::weight ? "" : figure});
    }
    say_once(arrows, ForceKind::carried, 1);
    return arrows;
}

void add_wall(Easel& easel, const FreeBody& body, double left, double face) {
    const double over = easel.on_wall(4);
    const Rect<Wall> wall{{left, -over}, {face, body.outside.height + over}};
    easel.add(box(wall, {Paint{Ink::floor}, std::nullopt}));
    easel.add(
        Hatch<Wall>{{{wall.min, {wall.max.x, wall.min.y}, wall.max, {wall.min.x, wall.max.y}}},
                    {Ink::hidden, {}, 0.5},
                    1.6});
    easel.add(line<Wall>({face, wall.min.y}, wall.max, {{Ink::outline}, 0.5}));
    easel.room.take(wall);
}

/// The frame's back as it would lean if nothing held it.
void add_lean(Easel& easel, const FreeBody& body, const SideMap& map) {
    if (std::ranges::none_of(body.forces,
                             [](const Force& one) { return one.kind == ForceKind::held; }))
        return;
    constexpr double kRadians = kLeanDegrees * 3.14159265358979 / 180;
    const Point<Wall> foot = map(0, 0);
    const Point<Wall> top{foot.x + body.outside.height * std::sin(kRadians),
                          body.outside.height * std::cos(kRadians)};
    easel.add(line<Wall>(foot, top, {{Ink::mark}, 0.25, LineType::dashed}));
}

void add_depth(Easel& easel, const FreeBody& body, const SideMap& map) {
    const double line = -easel.on_wall(3);
    const double from = map(0, 0).x;
    const double to = map(body.depth, 0).x;
    add_extension(easel, {to, 0}, {to, line});
    add_dimension_line(easel, spacing::Axis::horizontal, line, from, to);
    const char* remark = map.stretch > 1.05 ? ", drawn deeper" : "";
    Text<Wall> words{{to, line - easel.on_wall(kWordSize + 2)},
                     fmt::format("{}{}", units::format_length(body.depth, easel.unit), remark),
                     kWordSize,
                     {Ink::dimension},
                     Align::right};
    while (!easel.room.is_free(estimated_box(words, easel.scale)))
        words.at.y -= easel.on_wall(1);
    easel.add_label(words);
}

}  // namespace

double paper_mm_per_newton(const FreeBody& body, double scale) {
    double strongest = 0;
    for (const Force& force : body.forces)
        strongest =
            std::max(strongest, std::hypot(force.newtons.x, force.newtons.y, force.newtons.z));
    const double longest =
        std::clamp(kLongestShare * body.outside.height * scale, kShortest, kLongest);
    return strongest > 0 ? longest / strongest : 1;
}

void add_front_view(Easel& easel, const FreeBody& body, double paper_mm) {
    const Rect<Wall> frame = Rect<Wall>::at({0, 0}, body.outside);
    add_frame(easel, frame);
    for (const hanging::Strand& strand : body.cord)
        add_strand(easel, {strand.from.x, strand.from.y}, {strand.to.x, strand.to.y},
                   body.outside.height);
    for (const Point<Wall> at : bearing_points(body))
        add_point(easel, at);
    for (const Force& force : body.forces)
        if (force.kind == ForceKind::weight)
            add_centre_of_gravity(easel, {force.at.x, force.at.y});
    add_arrows(easel, front_arrows(easel, body), paper_mm, frame.centre().x);
}

void add_side_view(Easel& easel, const FreeBody& body, double paper_mm, double left) {
    SideMap map;
    map.wall = left + easel.on_wall(kWallThick);
    if (body.depth > 0)
        map.stretch = std::max(1.0, easel.on_wall(kDepthLeast) / body.depth);
    const Rect<Wall> frame{map(0, 0), map(body.depth, body.outside.height)};
    add_wall(easel, body, left, map.wall);
    add_frame(easel, frame);
    add_lean(easel, body, map);
    for (const hanging::Strand& strand : body.cord)
        add_strand(easel, map(strand.from.z, strand.from.y), map(strand.to.z, strand.to.y),
                   body.outside.height);
    for (const Force& force : body.forces)
        if (force.kind == ForceKind::weight)
            add_centre_of_gravity(easel, map(force.at.z, force.at.y));
    add_arrows(easel, side_arrows(easel, body, map), paper_mm, map.wall);
    add_depth(easel, body, map);
}

}  // namespace wallwright::draw
