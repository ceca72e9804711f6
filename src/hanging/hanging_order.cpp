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

/// The piece nearest to the middle of the lowest row: of all those that begin below the middle of
/// the lowest piece. Of the earliest stage alone.
std::size_t first_of(const std::vector<Upcoming>& pieces) {
    const int stage = std::ranges::min(pieces, {}, &Upcoming::stage).stage;
    const Upcoming& lowest = std::ranges::min(pieces, {}, [stage](const Upcoming& piece) {
        return std::tuple(piece.stage != stage, piece.place.bottom());
    });
    const auto in_row = [&](const Upcoming& piece) {
        return piece.stage == stage && piece.place.bottom() < lowest.place.centre().y;
    };
    Rect<Wall> row = lowest.place;
    for (const Upcoming& piece : pieces)
        if (in_row(piece))
            row = hull(row, piece.place);
    const auto first = std::ranges::min_element(pieces, {}, [&](const Upcoming& piece) {
        return std::tuple(!in_row(piece), std::abs(piece.place.centre().x - row.centre().x));
    });
    return static_cast<std::size_t>(first - pieces.begin());
}

}  // namespace

std::vector<std::size_t> hanging_order(const std::vector<Upcoming>& pieces) {
    if (pieces.empty())
        return {};
    std::vector<double> to_hung(pieces.size(), std::numeric_limits<double>::infinity());
    std::vector<bool> hung(pieces.size(), false);
    std::vector<std::size_t> order{first_of(pieces)};
    const Point<Wall> start = pieces[order.front()].place.centre();
    std::vector<double> from_start;
    for (const Upcoming& piece : pieces)
        from_start.push_back(distance(piece.place.centre(), start));
    const auto rank = [&](std::size_t i) {
        return std::tuple(bool(hung[i]), pieces[i].stage, to_hung[i], from_start[i]);
    };
    while (order.size() < pieces.size()) {
        const std::size_t last = order.back();
        hung[last] = true;
        std::size_t next = last;
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            to_hung[i] =
                std::min(to_hung[i], distance_between(pieces[i].place, pieces[last].place));
            if (rank(i) < rank(next))
                next = i;
        }
        order.push_back(next);
    }
    return order;
}

}  // namespace wallwright::hanging
