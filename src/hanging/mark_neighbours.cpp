#include "hanging/mark_neighbours.h"

#include <algorithm>
#include <optional>

namespace wallwright::hanging {

namespace {

using geometry::Rect;
using geometry::Wall;
using Places = std::span<const Rect<Wall>>;

constexpr double kInLine = 0.05;  ///< mm; half of what lengths are shown to.

bool same(double a, double b) {
    return std::abs(a - b) < kInLine;
}

bool level_in_line(const Rect<Wall>& a, const Rect<Wall>& b) {
    return same(a.top(), b.top()) || same(a.bottom(), b.bottom()) ||
           same(a.centre().y, b.centre().y);
}

bool upright_in_line(const Rect<Wall>& a, const Rect<Wall>& b) {
    return same(a.left(), b.left()) || same(a.right(), b.right()) ||
           same(a.centre().x, b.centre().x);
}

/// The rectangle between two that face each other across it, which share some of their height.
std::optional<Rect<Wall>> between_side_by_side(const Rect<Wall>& left, const Rect<Wall>& right) {
    const Rect<Wall> gap{{left.right(), std::max(left.bottom(), right.bottom())},
                         {right.left(), std::min(left.top(), right.top())}};
    if (gap.width() < -geometry::kLengthEps || gap.height() <= geometry::kLengthEps)
        return std::nullopt;
    return gap;
}

std::optional<Rect<Wall>> between_stacked(const Rect<Wall>& low, const Rect<Wall>& high) {
    const Rect<Wall> gap{{std::max(low.left(), high.left()), low.top()},
                         {std::min(low.right(), high.right()), high.bottom()}};
    if (gap.height() < -geometry::kLengthEps || gap.width() <= geometry::kLengthEps)
        return std::nullopt;
    return gap;
}

bool is_parted(Places places, const Rect<Wall>& gap) {
    return std::ranges::any_of(places,
                               [&gap](const Rect<Wall>& place) { return overlaps(place, gap); });
}

/// How `second` faces `first` from the right or from above.
std::optional<Neighbours> facing(Places places, std::size_t first, std::size_t second,
                                 double reach) {
    const Rect<Wall>& a = places[first];
    const Rect<Wall>& b = places[second];
    if (const auto gap = between_side_by_side(a, b))
        if (gap->width() <= reach && !is_parted(places, *gap))
            return Neighbours{first, second, true, std::max(0.0, gap->width()),
                              level_in_line(a, b)};
    if (const auto gap = between_stacked(a, b))
        if (gap->height() <= reach && !is_parted(places, *gap))
            return Neighbours{first, second, false, std::max(0.0, gap->height()),
                              upright_in_line(a, b)};
    return std::nullopt;
}

}  // namespace

std::vector<Neighbours> neighbours_of(Places places, double reach) {
    std::vector<Neighbours> found;
    for (std::size_t i = 0; i < places.size(); ++i)
        for (std::size_t j = 0; j < places.size(); ++j)
            if (i != j)
                if (const auto pair = facing(places, i, j, reach))
                    found.push_back(*pair);
    return found;
}

}  // namespace wallwright::hanging
