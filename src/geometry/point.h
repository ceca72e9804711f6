// Points and the spaces they live in. A space is part of a point's type, so that a place on the
// wall and a place on a page cannot be mixed; only a Transform crosses from one to the other.
#pragma once

#include <cmath>

namespace wallwright::geometry {

/// Millimetres on the wall as an elevation: x right from the wall's left edge, y up from the floor.
struct Wall {
    static constexpr bool kUpward = true;
};
/// Millimetres on paper: x right from the left edge, y down from the top edge.
struct Page {
    static constexpr bool kUpward = false;
};

/// Pixels of a window: x right from its left edge, y down from its top edge.
struct Screen {
    static constexpr bool kUpward = false;
};

inline constexpr double kLengthEps = 1e-6;  ///< mm; below this two places are one.

template <class Space>
struct Vec {
    double x = 0;
    double y = 0;
    bool operator==(const Vec&) const = default;
};

template <class Space>
struct Point {
    double x = 0;
    double y = 0;
    bool operator==(const Point&) const = default;
};

template <class S>
constexpr Vec<S> operator-(Point<S> a, Point<S> b) {
    return {a.x - b.x, a.y - b.y};
}
template <class S>
constexpr Point<S> operator+(Point<S> a, Vec<S> by) {
    return {a.x + by.x, a.y + by.y};
}
template <class S>
constexpr Vec<S> operator+(Vec<S> a, Vec<S> b) {
    return {a.x + b.x, a.y + b.y};
}
template <class S>
constexpr Vec<S> operator*(double factor, Vec<S> a) {
    return {factor * a.x, factor * a.y};
}
template <class S>
double length(Vec<S> a) {
    return std::hypot(a.x, a.y);
}
template <class S>
double distance(Point<S> a, Point<S> b) {
    return length(a - b);
}

}  // namespace wallwright::geometry
