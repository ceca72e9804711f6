#include "hanging/outline_edges.h"

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using geometry::Point;
using geometry::Polygon;
using geometry::Rect;
using geometry::Segment;
using geometry::Span;
using geometry::Wall;

bool same(double a, double b) {
    return std::abs(a - b) <= geometry::kLengthEps;
}

void add_upright(const Polygon& outline, Segment<Wall> side, OutlineEdges& edges) {
    const Rect<Wall> bounds = geometry::bounds(outline);
    if (side.from.y > side.to.y)
        std::swap(side.from, side.to);
    if (same(side.from.x, bounds.left()) || same(side.from.x, bounds.right()))
        edges.ends.push_back(side);
}

void add_level_or_sloping(const Polygon& outline, Segment<Wall> side, OutlineEdges& edges) {
    if (side.from.x > side.to.x)
        std::swap(side.from, side.to);
    const double y = (side.from.y + side.to.y) / 2;
    const auto span = vertical_span(outline, (side.from.x + side.to.x) / 2);
    if (span && same(span->high, y))
        edges.ceiling.push_back(side);
    else if (span && same(span->low, y))
        edges.floor.push_back(side);
}

}  // namespace

OutlineEdges edges_of(const Polygon& outline) {
    OutlineEdges edges;
    for (std::size_t i = 0; i < outline.corners.size(); ++i) {
        const Segment<Wall> one = side(outline, i);
        if (same(one.from.x, one.to.x))
            add_upright(outline, one, edges);
        else
            add_level_or_sloping(outline, one, edges);
    }
    return edges;
}

std::vector<Rect<Wall>> steps_along(const Segment<Wall>& side, double step) {
    const geometry::Vec<Wall> whole = side.to - side.from;
    const int count = std::max(1, static_cast<int>(std::ceil(std::abs(whole.y) / step)));
    std::vector<Rect<Wall>> steps;
    Point<Wall> from = side.from;
    for (int i = 1; i <= count; ++i) {
        const Point<Wall> to = i == count ? side.to : side.from + (1.0 * i / count) * whole;
        steps.push_back({{from.x, std::min(from.y, to.y)}, {to.x, std::max(from.y, to.y)}});
        from = to;
    }
    return steps;
}

std::optional<Span> height_between(const Polygon& outline, double left, double right) {
    std::vector<double> places{left, right};
    for (const Point<Wall>& corner : outline.corners)
        if (corner.x > left && corner.x < right)
            places.push_back(corner.x);
    std::optional<Span> reach;
    for (const double x : places)
        if (const auto here = vertical_span(outline, x))
            reach = reach ? Span{std::min(reach->low, here->low), std::max(reach->high, here->high)}
                          : *here;
    return reach;
}

std::optional<Span> width_between(const Polygon& outline, double bottom, double top) {
    Polygon turned = outline;
    for (Point<Wall>& corner : turned.corners)
        std::swap(corner.x, corner.y);
    return height_between(turned, bottom, top);
}

}  // namespace wallwright::hanging
