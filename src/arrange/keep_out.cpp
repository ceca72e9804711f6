#include "arrange/keep_out.h"

#include "wall/this_side.h"
#include "wall/titles.h"

#include <algorithm>
#include <cmath>

namespace wallwright::arrange {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Wall;
using spacing::Obstacle;

constexpr double kBeyond = 10000;  // mm: farther out than any piece is wide
constexpr double kStep = 20;       // mm

std::vector<double> corner_columns(const geometry::Polygon& outline) {
    std::vector<double> xs;
    for (const Point<Wall> corner : outline.corners)
        xs.push_back(corner.x);
    std::sort(xs.begin(), xs.end());
    xs.erase(std::unique(xs.begin(), xs.end()), xs.end());
    return xs;
}

/// The wall between x and x + width, as high as it is everywhere there. Taken just inside both
/// ends, where a vertical side of the outline does not count.
geometry::Span clear_span(const geometry::Polygon& outline, double left, double right) {
    const double inset = std::min(1e-3, (right - left) / 4);
    const auto at_left = geometry::vertical_span(outline, left + inset);
    const auto at_right = geometry::vertical_span(outline, right - inset);
    if (!at_left || !at_right)
        return {0, 0};
    return {std::max(at_left->low, at_right->low), std::min(at_left->high, at_right->high)};
}

bool is_level(const geometry::Polygon& outline, double left, double right) {
    const double inset = std::min(1e-3, (right - left) / 4);
    const auto at_left = geometry::vertical_span(outline, left + inset);
    const auto at_right = geometry::vertical_span(outline, right - inset);
    return at_left && at_right && std::abs(at_left->low - at_right->low) < 1e-2 &&
           std::abs(at_left->high - at_right->high) < 1e-2;
}

void add_column(std::vector<Obstacle>& out, const geometry::Polygon& outline, double left,
                double right) {
    const geometry::Span span = clear_span(outline, left, right);
    out.push_back({"the ceiling", {{left, span.high}, {right, span.high + kBeyond}}});
    out.push_back({"the floor", {{left, span.low - kBeyond}, {right, span.low}}});
}

void add_outside(std::vector<Obstacle>& out, const geometry::Polygon& outline) {
    const Rect<Wall> box = geometry::bounds(outline);
    const double low = box.bottom() - kBeyond;
    const double high = box.top() + kBeyond;
    out.push_back({"the wall's left end", {{box.left() - kBeyond, low}, {box.left(), high}}});
    out.push_back({"the wall's right end", {{box.right(), low}, {box.right() + kBeyond, high}}});
    const std::vector<double> xs = corner_columns(outline);
    for (std::size_t i = 0; i + 1 < xs.size(); ++i) {
        const int steps =
            is_level(outline, xs[i], xs[i + 1])
                ? 1
                : std::max(1, static_cast<int>(std::ceil((xs[i + 1] - xs[i]) / kStep)));
        const double width = (xs[i + 1] - xs[i]) / steps;
        for (int step = 0; step < steps; ++step)
            add_column(out, outline, xs[i] + step * width, xs[i] + (step + 1) * width);
    }
}

bool hides_the_wall(wall::FurnitureType type) {
    return type != wall::FurnitureType::lamp && type != wall::FurnitureType::plant;
}

}  // namespace

std::vector<Obstacle> keep_outs(const wall::Room& room) {
    std::vector<Obstacle> out;
    for (const wall::Furniture& one : room.furniture)
        if (hides_the_wall(one.type))
            out.push_back({title_of(one), one.place});
    for (const wall::Fixture* one : wall::fixtures_here(room))
        out.push_back({title_of(*one), one->place});
    add_outside(out, room.outline);
    return out;
}

}  // namespace wallwright::arrange
