// What is the same along x and along y is written once and asked for one axis or the other.
#pragma once

#include "geometry/polygon.h"
#include "spacing/alignment.h"

namespace wallwright::desk {

constexpr spacing::Axis other_axis(spacing::Axis axis) {
    return axis == spacing::Axis::horizontal ? spacing::Axis::vertical : spacing::Axis::horizontal;
}

constexpr geometry::Point<geometry::Wall> point_on(spacing::Axis axis, double along,
                                                   double across) {
    return axis == spacing::Axis::horizontal ? geometry::Point<geometry::Wall>{along, across}
                                             : geometry::Point<geometry::Wall>{across, along};
}

constexpr double along(spacing::Axis axis, geometry::Point<geometry::Wall> point) {
    return axis == spacing::Axis::horizontal ? point.x : point.y;
}

inline double low(const geometry::Rect<geometry::Wall>& place, spacing::Axis axis) {
    return along(axis, place.min);
}
inline double high(const geometry::Rect<geometry::Wall>& place, spacing::Axis axis) {
    return along(axis, place.max);
}

/// How far the two overlap along the axis, in mm; negative is the clear distance.
constexpr double overlap(spacing::Axis axis, const geometry::Rect<geometry::Wall>& a,
                         const geometry::Rect<geometry::Wall>& b) {
    return axis == spacing::Axis::horizontal ? geometry::overlap_x(a, b)
                                             : geometry::overlap_y(a, b);
}

/// From edge to edge of two rectangles that face each other along the axis, in the middle of what
/// they share across it, from the lower one to the higher.
inline geometry::Segment<geometry::Wall> line_between(const geometry::Rect<geometry::Wall>& a,
                                                      const geometry::Rect<geometry::Wall>& b,
                                                      spacing::Axis axis) {
    const spacing::Axis across = other_axis(axis);
    const double middle =
        (std::max(low(a, across), low(b, across)) + std::min(high(a, across), high(b, across))) / 2;
    const bool a_first = low(a, axis) <= low(b, axis);
    return {point_on(axis, high(a_first ? a : b, axis), middle),
            point_on(axis, low(a_first ? b : a, axis), middle)};
}

}  // namespace wallwright::desk
