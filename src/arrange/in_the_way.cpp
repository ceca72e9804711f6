#include "arrange/in_the_way.h"

#include <algorithm>
#include <cmath>

namespace wallwright::arrange {

namespace {

using spacing::Obstacle;

/// Where one span is nearest to another; in the middle of what both have in common.
double nearest_of(double low, double high, double other_low, double other_high) {
    if (high <= other_low)
        return high;
    if (low >= other_high)
        return low;
    return (std::max(low, other_low) + std::min(high, other_high)) / 2;
}

WallPoint nearest_of(const WallRect& one, const WallRect& other) {
    return {nearest_of(one.left(), one.right(), other.left(), other.right()),
            nearest_of(one.bottom(), one.top(), other.bottom(), other.top())};
}

/// The line with its direction, and how much room along it a piece takes.
struct Line {
    WallPoint start;
    double length = 0;  ///< mm
    double x = 0;       ///< Of the direction, which is 1 long.
    double y = 0;
    double piece = 0;  ///< mm

    explicit Line(const Way& way) : start(way.start()) {
        const WallPoint end = way.end();
        length = std::hypot(end.x - start.x, end.y - start.y);
        if (length > 0) {
            x = (end.x - start.x) / length;
            y = (end.y - start.y) / length;
        }
        piece = std::abs(x) * way.piece.width + std::abs(y) * way.piece.height;
    }

    /// mm from the start to where the line comes into the rectangle (Liang and Barsky, A new
    /// concept and method for line clipping, 1984).
    [[nodiscard]] std::optional<double> comes_into(const WallRect& rect) const {
        double in = 0;
        double out = length;
        const auto clip = [&](double from, double along, double low, double high) {
            if (along == 0)
                return low < from && from < high;
            in = std::max(in, std::min((low - from) / along, (high - from) / along));
            out = std::min(out, std::max((low - from) / along, (high - from) / along));
            return in < out;
        };
        if (!clip(start.x, x, rect.left(), rect.right()) ||
            !clip(start.y, y, rect.bottom(), rect.top()))
            return std::nullopt;
        return in;
    }
    /// Whether it leads nearer to the rectangle from where it starts.
    [[nodiscard]] bool leads_to(const WallRect& rect) const {
        const WallPoint near{std::clamp(start.x, rect.left(), rect.right()),
                             std::clamp(start.y, rect.bottom(), rect.top())};
        return (near.x - start.x) * x + (near.y - start.y) * y > geometry::kLengthEps;
    }
};

/// The nearest thing that comes within `clear` of the line.
std::optional<InTheWay> nearest_thing(const Way& way, std::span<const Obstacle> things,
                                      double clear) {
    const Line line(way);
    std::optional<InTheWay> nearest;
    double least = line.length;
    for (const Obstacle& thing : things) {
        const auto at = line.comes_into(thing.place.grown(clear - geometry::kLengthEps));
        if (!at || *at >= least || !line.leads_to(thing.place))
            continue;
        const bool fits = *at + clear >= line.piece + 2 * way.gap;
        if (fits && geometry::distance_between(thing.place, way.target) <= way.gap)
            continue;
        nearest = InTheWay{thing.name, fits};
        least = *at;
    }
    return nearest;
}

}  // namespace

WallPoint Way::start() const {
    return nearest_of(from, target);
}

WallPoint Way::end() const {
    return nearest_of(target, from);
}

WallRect Way::next() const {
    const Line line(*this);
    const double on = gap + line.piece / 2;
    return WallRect::at({line.start.x + on * line.x - piece.width / 2,
                         line.start.y + on * line.y - piece.height / 2},
                        piece);
}

std::optional<InTheWay> in_the_way(const Way& way, std::span<const Obstacle> things) {
    if (auto met = nearest_thing(way, things, way.gap))
        return met;
    const double half = std::min(way.piece.width, way.piece.height) / 2;
    auto brushed = nearest_thing(way, things, way.gap + half);
    return brushed && !brushed->fits_before ? brushed : std::nullopt;
}

}  // namespace wallwright::arrange
