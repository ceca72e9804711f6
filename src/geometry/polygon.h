// The outline of a wall: a simple polygon, so that a sloping ceiling or a stair is as good as a
// flat wall.
#pragma once

#include "geometry/rect.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace wallwright::geometry {

template <class Space>
struct Segment {
    Point<Space> from;
    Point<Space> to;
};

/// Corners in order, either way round; the last joins the first.
struct Polygon {
    std::vector<Point<Wall>> corners;
    bool operator==(const Polygon&) const = default;
};

/// The area in mm2, always positive (shoelace formula).
double area(const Polygon& polygon);
Rect<Wall> bounds(const Polygon& polygon);
/// True for four corners that are those of the bounds.
bool is_rectangle(const Polygon& polygon);
Segment<Wall> side(const Polygon& polygon, std::size_t index);

/// True when the point is inside or within kLengthEps of the edge.
bool contains(const Polygon& polygon, Point<Wall> point);
/// True when no part of the rectangle is outside, touching allowed.
bool contains(const Polygon& polygon, const Rect<Wall>& rect);

/// How far the rectangle reaches outside, in mm: the greatest distance from a corner of it that is
/// outside to the outline, or from an outline corner inside it to its nearest edge. 0 when it is
/// inside.
double protrusion(const Polygon& polygon, const Rect<Wall>& rect);

/// The indices of two sides that cross or lie on each other, or nothing for a simple polygon.
struct SidePair {
    std::size_t first = 0;
    std::size_t second = 0;
};
std::optional<SidePair> crossing_sides(const Polygon& polygon);

/// The highest and lowest y of the outline above `x`: where ceiling and floor are there. Empty
/// outside the outline's width.
struct Span {
    double low = 0;
    double high = 0;
};
std::optional<Span> vertical_span(const Polygon& polygon, double x);

/// The distance from a point to a segment, in mm.
double distance(Point<Wall> point, const Segment<Wall>& segment);

}  // namespace wallwright::geometry
