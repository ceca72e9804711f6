#include "geometry/polygon.h"

#include "base/contract.h"

#include <algorithm>
#include <cmath>

namespace wallwright::geometry {

namespace {

using P = Point<Wall>;

double cross(P origin, P a, P b) {
    return (a.x - origin.x) * (b.y - origin.y) - (a.y - origin.y) * (b.x - origin.x);
}

double distance_to_outline(const Polygon& polygon, P point) {
    double nearest = INFINITY;
    for (std::size_t i = 0; i < polygon.corners.size(); ++i)
        nearest = std::min(nearest, distance(point, side(polygon, i)));
    return nearest;
}

/// Even-odd rule: how often a ray to the right crosses the outline.
bool inside_strictly(const Polygon& polygon, P point) {
    bool inside = false;
    for (std::size_t i = 0; i < polygon.corners.size(); ++i) {
        const auto [a, b] = side(polygon, i);
        const bool spans = (a.y > point.y) != (b.y > point.y);
        if (spans && point.x < a.x + (b.x - a.x) * (point.y - a.y) / (b.y - a.y))
            inside = !inside;
    }
    return inside;
}

/// Signed distance of c from the line through a and b, in mm.
double off_line(const Segment<Wall>& line, P c) {
    return cross(line.from, line.to, c) / distance(line.from, line.to);
}

bool cross_each_other(const Segment<Wall>& s, const Segment<Wall>& t) {
    const double from = off_line(s, t.from);
    const double to = off_line(s, t.to);
    const double back_from = off_line(t, s.from);
    const double back_to = off_line(t, s.to);
    const bool parts =
        (from > kLengthEps && to < -kLengthEps) || (from < -kLengthEps && to > kLengthEps);
    const bool parts_back = (back_from > kLengthEps && back_to < -kLengthEps) ||
                            (back_from < -kLengthEps && back_to > kLengthEps);
    return parts && parts_back;
}

bool touch(const Segment<Wall>& s, const Segment<Wall>& t) {
    return distance(s.from, t) <= kLengthEps || distance(s.to, t) <= kLengthEps ||
           distance(t.from, s) <= kLengthEps || distance(t.to, s) <= kLengthEps;
}

/// Neighbouring sides share a corner; they may not fold back onto each other.
bool folds_back(const Segment<Wall>& s, const Segment<Wall>& next) {
    const double along = (s.to.x - s.from.x) * (next.to.x - next.from.x) +
                         (s.to.y - s.from.y) * (next.to.y - next.from.y);
    return along < 0 && std::abs(off_line(s, next.to)) <= kLengthEps;
}

/// True when the outline runs through the inside of the rectangle.
bool outline_enters(const Polygon& polygon, const Rect<Wall>& rect) {
    const Rect<Wall> inside = rect.grown(-kLengthEps);
    for (std::size_t i = 0; i < polygon.corners.size(); ++i) {
        const auto [a, b] = side(polygon, i);
        double enter = 0;
        double leave = 1;
        // Liang-Barsky clipping of the side against the rectangle.
        const auto clip = [&](double direction, double room) {
            if (direction == 0)
                return room > 0;
            const double t = room / direction;
            (direction < 0 ? enter : leave) =
                direction < 0 ? std::max(enter, t) : std::min(leave, t);
            return true;
        };
        const bool may = clip(a.x - b.x, a.x - inside.min.x) &&
                         clip(b.x - a.x, inside.max.x - a.x) &&
                         clip(a.y - b.y, a.y - inside.min.y) && clip(b.y - a.y, inside.max.y - a.y);
        if (may && enter < leave)
            return true;
    }
    return false;
}

}  // namespace

Segment<Wall> side(const Polygon& polygon, std::size_t index) {
    WW_EXPECT(index < polygon.corners.size(), "a side is asked for by an index that exists");
    return {polygon.corners[index], polygon.corners[(index + 1) % polygon.corners.size()]};
}

double area(const Polygon& polygon) {
    double twice = 0;
    for (std::size_t i = 0; i < polygon.corners.size(); ++i) {
        const auto [a, b] = side(polygon, i);
        twice += a.x * b.y - b.x * a.y;
    }
    return std::abs(twice) / 2;
}

Rect<Wall> bounds(const Polygon& polygon) {
    WW_EXPECT(!polygon.corners.empty(), "an outline has corners");
    Rect<Wall> box{polygon.corners.front(), polygon.corners.front()};
    for (const P corner : polygon.corners)
        box = hull(box, Rect<Wall>{corner, corner});
    return box;
}

bool is_rectangle(const Polygon& polygon) {
    return polygon.corners.size() == 4 &&
           std::abs(area(polygon) - bounds(polygon).size().area()) < 1;
}

double distance(P point, const Segment<Wall>& segment) {
    const Vec<Wall> along = segment.to - segment.from;
    const double squared = along.x * along.x + along.y * along.y;
    if (squared == 0)
        return distance(point, segment.from);
    const Vec<Wall> to_point = point - segment.from;
    const double t = std::clamp((to_point.x * along.x + to_point.y * along.y) / squared, 0.0, 1.0);
    return distance(point, segment.from + t * along);
}

bool contains(const Polygon& polygon, P point) {
    return inside_strictly(polygon, point) || distance_to_outline(polygon, point) <= kLengthEps;
}

bool contains(const Polygon& polygon, const Rect<Wall>& rect) {
    const P corners[] = {rect.min, {rect.max.x, rect.min.y}, rect.max, {rect.min.x, rect.max.y}};
    const bool all_corners_in = std::all_of(std::begin(corners), std::end(corners),
                                            [&](P corner) { return contains(polygon, corner); });
    return all_corners_in && !outline_enters(polygon, rect);
}

double protrusion(const Polygon& polygon, const Rect<Wall>& rect) {
    double most = 0;
    for (const P corner :
         {rect.min, P{rect.max.x, rect.min.y}, rect.max, P{rect.min.x, rect.max.y}})
        if (!contains(polygon, corner))
            most = std::max(most, distance_to_outline(polygon, corner));
    for (const P corner : polygon.corners)
        if (rect.contains(corner))
            most = std::max(most, std::min({corner.x - rect.min.x, rect.max.x - corner.x,
                                            corner.y - rect.min.y, rect.max.y - corner.y}));
    return contains(polygon, rect) ? 0 : most;
}

std::optional<SidePair> crossing_sides(const Polygon& polygon) {
    const std::size_t count = polygon.corners.size();
    for (std::size_t i = 0; i < count; ++i)
        for (std::size_t j = i + 1; j < count; ++j) {
            const Segment<Wall> s = side(polygon, i);
            const Segment<Wall> t = side(polygon, j);
            const bool next = j == i + 1;
            const bool last = i == 0 && j == count - 1;
            const bool wrong = next   ? folds_back(s, t)
                               : last ? folds_back(t, s)
                                      : cross_each_other(s, t) || touch(s, t);
            if (wrong)
                return SidePair{i, j};
        }
    return std::nullopt;
}

std::optional<Span> vertical_span(const Polygon& polygon, double x) {
    std::optional<Span> span;
    const auto include = [&span](double y) {
        span = span ? Span{std::min(span->low, y), std::max(span->high, y)} : Span{y, y};
    };
    for (std::size_t i = 0; i < polygon.corners.size(); ++i) {
        const auto [a, b] = side(polygon, i);
        if (x < std::min(a.x, b.x) || x > std::max(a.x, b.x))
            continue;
        if (a.x == b.x) {
            include(a.y);
            include(b.y);
        } else {
            include(a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x));
        }
    }
    return span;
}

}  // namespace wallwright::geometry
