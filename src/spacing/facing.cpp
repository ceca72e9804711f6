#include "spacing/facing.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace wallwright::spacing {

namespace {

using geometry::kLengthEps;

/// What lies between two rectangles side by side, over the heights they share.
WallRect between_columns(const WallRect& left, const WallRect& right) {
    return {{left.max.x, std::max(left.min.y, right.min.y)},
            {std::max(left.max.x, right.min.x), std::min(left.max.y, right.max.y)}};
}

WallRect between_rows(const WallRect& below, const WallRect& above) {
    return {{std::max(below.min.x, above.min.x), below.max.y},
            {std::min(below.max.x, above.max.x), std::max(below.max.y, above.min.y)}};
}

/// The lower of the two on the axis first.
std::pair<std::size_t, std::size_t> in_order(std::span<const WallRect> places, std::size_t a,
                                             std::size_t b, Axis axis) {
    const bool is_in_order = axis == Axis::horizontal ? places[a].left() <= places[b].left()
                                                      : places[a].bottom() <= places[b].bottom();
    return is_in_order ? std::pair(a, b) : std::pair(b, a);
}

/// As if the two hung alone; empty when they overlap or only their corners look at each other.
std::optional<Facing> facing_alone(std::span<const WallRect> places, std::size_t a, std::size_t b) {
    const double across_x = -geometry::overlap_x(places[a], places[b]);
    const double across_y = -geometry::overlap_y(places[a], places[b]);
    if (across_x >= -kLengthEps && across_y < -kLengthEps) {
        const auto [left, right] = in_order(places, a, b, Axis::horizontal);
        return Facing{left, right, Axis::horizontal, std::max(0.0, across_x),
                      between_columns(places[left], places[right])};
    }
    if (across_y >= -kLengthEps && across_x < -kLengthEps) {
        const auto [below, above] = in_order(places, a, b, Axis::vertical);
        return Facing{below, above, Axis::vertical, std::max(0.0, across_y),
                      between_rows(places[below], places[above])};
    }
    return std::nullopt;
}

}  // namespace

std::vector<Facing> facing_pairs(std::span<const WallRect> places, double reach) {
    std::vector<Facing> pairs;
    for (std::size_t a = 0; a < places.size(); ++a) {
        for (std::size_t b = a + 1; b < places.size(); ++b) {
            const std::optional<Facing> facing = facing_alone(places, a, b);
            if (!facing || facing->size > reach + kLengthEps) {
                continue;
            }
            const bool parted = std::ranges::any_of(places, [&facing](const WallRect& third) {
                return geometry::overlaps(third, facing->place);
            });
            if (!parted) {
                pairs.push_back(*facing);
            }
        }
    }
    return pairs;
}

std::vector<Facing> corner_pairs(std::span<const WallRect> places, double reach) {
    std::vector<Facing> pairs;
    for (std::size_t a = 0; a < places.size(); ++a) {
        for (std::size_t b = a + 1; b < places.size(); ++b) {
            const double x = -geometry::overlap_x(places[a], places[b]);
            const double y = -geometry::overlap_y(places[a], places[b]);
            if (std::min(x, y) < -kLengthEps || std::max(x, y) >= reach) {
                continue;
            }
            const Axis axis = x >= y ? Axis::horizontal : Axis::vertical;
            const auto [low, high] = in_order(places, a, b, axis);
            const auto [left, right] = in_order(places, a, b, Axis::horizontal);
            const auto [below, above] = in_order(places, a, b, Axis::vertical);
            pairs.push_back({low,
                             high,
                             axis,
                             std::max(x, y),
                             {{places[left].max.x, places[below].max.y},
                              {places[right].min.x, places[above].min.y}}});
        }
    }
    return pairs;
}

std::vector<Gap> facing_gaps(std::span<const wall::Placed> pieces, double reach) {
    std::vector<WallRect> places;
    for (const wall::Placed& piece : pieces) {
        places.push_back(piece.place);
    }
    std::vector<Gap> gaps;
    for (const Facing& facing : facing_pairs(places, reach)) {
        gaps.push_back({pieces[facing.first].id, pieces[facing.second].id, facing.axis, facing.size,
                        facing.place});
    }
    return gaps;
}

}  // namespace wallwright::spacing
