// Ready-made paths: lines, boxes, rounded boxes, circles, and a pen for curves.
#pragma once

#include "draw/drawing.h"

#include <algorithm>
#include <initializer_list>
#include <optional>
#include <vector>

namespace wallwright::draw {

/// How a closed path looks: what fills it and what goes round it.
struct Look {
    std::optional<Paint> fill;
    std::optional<Stroke> stroke;
};

/// Bezier control distance for a quarter circle of radius 1: 4/3 (sqrt 2 - 1).
inline constexpr double kQuarter = 0.5522847498307936;

/// Builds a path step by step.
template <class Space>
class Pen {
  public:
    explicit Pen(Point<Space> start) { path_.start = start; }

    Pen& line(Point<Space> to) {
        path_.steps.push_back({to, std::nullopt});
        return *this;
    }
    Pen& curve(Point<Space> first, Point<Space> second, Point<Space> to) {
        path_.steps.push_back({to, std::pair{first, second}});
        return *this;
    }
    /// A quarter of an ellipse to `to` about the corner at which the tangents of both ends meet.
    Pen& round(Point<Space> corner, Point<Space> to) {
        const Point<Space> from = path_.steps.empty() ? path_.start : path_.steps.back().to;
        return curve(from + kQuarter * (corner - from), to + kQuarter * (corner - to), to);
    }

    [[nodiscard]] Path<Space> drawn(const Stroke& stroke) const {
        Path<Space> path = path_;
        path.stroke = stroke;
        return path;
    }
    [[nodiscard]] Path<Space> closed(const Look& look) const {
        Path<Space> path = path_;
        path.closed = true;
        path.fill = look.fill;
        path.stroke = look.stroke;
        return path;
    }

  private:
    Path<Space> path_;
};

template <class Space>
Path<Space> line(Point<Space> from, Point<Space> to, const Stroke& stroke) {
    return Pen<Space>(from).line(to).drawn(stroke);
}

/// At least one point; an open line through all of them.
template <class Space>
Path<Space> lines(const std::vector<Point<Space>>& points, const Stroke& stroke) {
    Pen<Space> pen(points.front());
    for (std::size_t i = 1; i < points.size(); ++i)
        pen.line(points[i]);
    return pen.drawn(stroke);
}

/// At least one point; closed.
template <class Space>
Path<Space> polygon(const std::vector<Point<Space>>& points, const Look& look) {
    Pen<Space> pen(points.front());
    for (std::size_t i = 1; i < points.size(); ++i)
        pen.line(points[i]);
    return pen.closed(look);
}

template <class Space>
Path<Space> box(const geometry::Rect<Space>& rect, const Look& look) {
    return polygon<Space>({rect.min, {rect.max.x, rect.min.y}, rect.max, {rect.min.x, rect.max.y}},
                          look);
}

/// The radius is made smaller where the box is too small for it.
template <class Space>
Path<Space> rounded_box(const geometry::Rect<Space>& rect, double radius, const Look& look) {
    const double r = std::min({radius, rect.width() / 2, rect.height() / 2});
    const Point<Space> a = rect.min;
    const Point<Space> b = rect.max;
    return Pen<Space>({a.x + r, a.y})
        .line({b.x - r, a.y})
        .round({b.x, a.y}, {b.x, a.y + r})
        .line({b.x, b.y - r})
        .round(b, {b.x - r, b.y})
        .line({a.x + r, b.y})
        .round({a.x, b.y}, {a.x, b.y - r})
        .line({a.x, a.y + r})
        .round(a, {a.x + r, a.y})
        .closed(look);
}

/// An ellipse that touches the rectangle's sides.
template <class Space>
Path<Space> ellipse(const geometry::Rect<Space>& within, const Look& look) {
    const Point<Space> a = within.min;
    const Point<Space> b = within.max;
    const Point<Space> c = within.centre();
    return Pen<Space>({c.x, a.y})
        .round({b.x, a.y}, {b.x, c.y})
        .round(b, {c.x, b.y})
        .round({a.x, b.y}, {a.x, c.y})
        .round(a, {c.x, a.y})
        .closed(look);
}

template <class Space>
Path<Space> circle(Point<Space> centre, double radius, const Look& look) {
    return ellipse(geometry::Rect<Space>{centre, centre}.grown(radius), look);
}

}  // namespace wallwright::draw
