#include "desk/snap_search.h"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <utility>

namespace wallwright::desk {

namespace {

using geometry::Rect;
using geometry::Wall;
using spacing::Axis;
using spacing::Line;

constexpr double kSame = 0.001;  // mm: distances nearer to each other than this are equal

/// How far apart two rectangles are along the axis on which they are farther apart; 0 when they
/// overlap.
double clear_distance(const Rect<Wall>& a, const Rect<Wall>& b) {
    return std::max({0.0, -geometry::overlap_x(a, b), -geometry::overlap_y(a, b)});
}

auto order(const Rest& rest, const Rect<Wall>& place) {
    return std::tuple(std::llround(std::abs(rest.by) / kSame), rest.rank,
                      clear_distance(rest.other, place));
}

/// `place` is where the rectangle rests in the end.
Guide guide_for(const Rest& rest, Axis axis, const Rect<Wall>& place) {
    if (rest.kind == SnapKind::gap)
        return {line_between(place, rest.other, axis), rest.words, rest.kind};
    const Axis across = other_axis(axis);
    const Rect<Wall> both = hull(place, rest.other);
    const double at = spacing::line_at(place, axis, rest.line);
    return {{point_on(axis, at, low(both, across)), point_on(axis, at, high(both, across))},
            rest.words,
            rest.kind};
}

}  // namespace

void SnapSearch::offer(Rest rest) {
    if (!(std::abs(rest.by) <= reach_))
        return;
    if (!best_ || order(rest, place_) < order(*best_, place_))
        best_ = std::move(rest);
}

std::string words_for(Axis axis, Line line) {
    if (line == Line::centre)
        return "centres";
    if (axis == Axis::horizontal)
        return line == Line::low ? "left edges" : "right edges";
    return line == Line::low ? "bottom edges" : "top edges";
}

Snapped found_by(const SnapSearch& x, const SnapSearch& y) {
    Snapped snapped;
    snapped.holds_x = x.best().has_value();
    snapped.holds_y = y.best().has_value();
    snapped.by = {x.best() ? x.best()->by : 0, y.best() ? y.best()->by : 0};
    const Rect<Wall> place = x.place().moved(snapped.by);
    for (const SnapSearch* search : {&x, &y})
        if (search->best())
            snapped.guides.push_back(guide_for(*search->best(), search->axis(), place));
    return snapped;
}

}  // namespace wallwright::desk
