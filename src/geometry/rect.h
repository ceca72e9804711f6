// Upright rectangles: what frames, furniture, fixtures and pages are.
#pragma once

#include "geometry/point.h"

#include <algorithm>
#include <cmath>

namespace wallwright::geometry {

/// Width and height in mm.
struct Size {
    double width = 0;
    double height = 0;
    bool operator==(const Size&) const = default;

    [[nodiscard]] constexpr double area() const { return width * height; }
    /// The size after a quarter turn.
    [[nodiscard]] constexpr Size turned() const { return {height, width}; }
};

/// True when the lengths differ by no more than rounding.
inline bool is_same_length(double a, double b) {
    return std::abs(a - b) < kLengthEps;
}
/// The same for both sides.
inline bool is_same_size(const Size& a, const Size& b) {
    return is_same_length(a.width, b.width) && is_same_length(a.height, b.height);
}

/// From `min` (least x and y) to `max`. On the wall, where y goes up, min is the lower left corner.
template <class Space>
struct Rect {
    Point<Space> min;
    Point<Space> max;
    bool operator==(const Rect&) const = default;

    static constexpr Rect at(Point<Space> corner, Size size) {
        return {corner, {corner.x + size.width, corner.y + size.height}};
    }

    [[nodiscard]] constexpr double left() const { return min.x; }
    [[nodiscard]] constexpr double right() const { return max.x; }
    [[nodiscard]] constexpr double bottom() const { return Space::kUpward ? min.y : max.y; }
    [[nodiscard]] constexpr double top() const { return Space::kUpward ? max.y : min.y; }
    [[nodiscard]] constexpr double width() const { return max.x - min.x; }
    [[nodiscard]] constexpr double height() const { return max.y - min.y; }
    [[nodiscard]] constexpr Size size() const { return {width(), height()}; }
    [[nodiscard]] constexpr Point<Space> centre() const {
        return {(min.x + max.x) / 2, (min.y + max.y) / 2};
    }

    [[nodiscard]] constexpr Rect moved(Vec<Space> by) const { return {min + by, max + by}; }
    /// Larger by `margin` on every side; smaller when it is negative.
    [[nodiscard]] constexpr Rect grown(double margin) const {
        return {{min.x - margin, min.y - margin}, {max.x + margin, max.y + margin}};
    }
    [[nodiscard]] constexpr bool contains(Point<Space> p) const {
        return p.x >= min.x && p.x <= max.x && p.y >= min.y && p.y <= max.y;
    }
};

/// How far the spans of a and b overlap along x, in mm; negative is the clear distance between
/// them.
template <class S>
constexpr double overlap_x(const Rect<S>& a, const Rect<S>& b) {
    return std::min(a.max.x, b.max.x) - std::max(a.min.x, b.min.x);
}
/// How far the spans of a and b overlap along y, in mm; negative is the clear distance between
/// them.
template <class S>
constexpr double overlap_y(const Rect<S>& a, const Rect<S>& b) {
    return std::min(a.max.y, b.max.y) - std::max(a.min.y, b.min.y);
}
/// True when the insides of a and b share more than rounding: touching edges do not overlap.
template <class S>
constexpr bool overlaps(const Rect<S>& a, const Rect<S>& b) {
    return overlap_x(a, b) > kLengthEps && overlap_y(a, b) > kLengthEps;
}
/// True when a and b share a point: edges count, and so does what has no width.
template <class S>
constexpr bool touch(const Rect<S>& a, const Rect<S>& b) {
    return overlap_x(a, b) >= 0 && overlap_y(a, b) >= 0;
}
/// The clear distance between the nearest points of a and b, in mm; 0 when they meet.
template <class S>
double distance_between(const Rect<S>& a, const Rect<S>& b) {
    return std::hypot(std::max(0.0, -overlap_x(a, b)), std::max(0.0, -overlap_y(a, b)));
}
/// The least rectangle that holds both.
template <class S>
constexpr Rect<S> hull(const Rect<S>& a, const Rect<S>& b) {
    return {{std::min(a.min.x, b.min.x), std::min(a.min.y, b.min.y)},
            {std::max(a.max.x, b.max.x), std::max(a.max.y, b.max.y)}};
}

}  // namespace wallwright::geometry
