#include "hanging/hanging_order.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

namespace wallwright::hanging {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Wall;

/// Clear distance between two rectangles, 0 when they touch or overlap.
double between(const Rect<Wall>& a, const Rect<Wall>& b) {
    return std::hypot(std::max(0.0, -overlap_x(a, b)), std::max(0.0, -overlap_y(a, b)));
}

/// The piece nearest to the middle of the lowest row: of all those that begin below the middle of
/// the lowest piece.
std::size_t first_of(const std::vector<Rect<Wall>>& places) {
    const Rect<Wall> lowest = *std::min_element(
        places.begin(), places.end(),
        [](const Rect<Wall>& a, const Rect<Wall>& b) { return a.bottom() < b.bottom(); });
    Rect<Wall> row = lowest;
    for (const Rect<Wall>& place : places)
        if (place.bottom() < lowest.centre().y)
            row = hull(row, place);
    const auto off_middle = [&](const Rect<Wall>& place) {
        const bool in_row = place.bottom() < lowest.centre().y;
        return std::tuple(!in_row, std::abs(place.centre().x - row.centre().x));
    };
    const auto first = std::min_element(
        places.begin(), places.end(),
        [&](const Rect<Wall>& a, const Rect<Wall>& b) { return off_middle(a) < off_middle(b); });
    return static_cast<std::size_t>(first - places.begin());
}

}  // namespace

std::vector<std::size_t> hanging_order(const std::vector<Rect<Wall>>& places) {
    if (places.empty())
        return {};
    std::vector<double> to_hung(places.size(), std::numeric_limits<double>::infinity());
    std::vector<bool> hung(places.size(), false);
    std::vector<std::size_t> order{first_of(places)};
    const Point<Wall> start = places[order.front()].centre();
    const auto rank = [&](std::size_t i) {
        return std::tuple(hung[i], to_hung[i], distance(places[i].centre(), start));
    };
    while (order.size() < places.size()) {
        const std::size_t last = order.back();
        hung[last] = true;
        std::size_t next = last;
        for (std::size_t i = 0; i < places.size(); ++i) {
            to_hung[i] = std::min(to_hung[i], between(places[i], places[last]));
            if (rank(i) < rank(next))
                next = i;
        }
        order.push_back(next);
    }
    return order;
}

}  // namespace wallwright::hanging
