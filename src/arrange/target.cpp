// Where the things are that a group can grow toward.
#include "arrange/grow.h"

#include <variant>

namespace wallwright::arrange {

namespace {

using wall::WallCorner;

WallPoint corner_of(const WallRect& bounds, WallCorner corner) {
    const bool left = corner == WallCorner::top_left || corner == WallCorner::bottom_left;
    const bool top = corner == WallCorner::top_left || corner == WallCorner::top_right;
    return {left ? bounds.left() : bounds.right(), top ? bounds.top() : bounds.bottom()};
}

struct PlaceOf {
    const wall::Room& room;

    std::optional<WallRect> operator()(const wall::FurnitureId& id) const {
        return wall::place_of(room, id);
    }
    std::optional<WallRect> operator()(const wall::FixtureId& id) const {
        return wall::place_of(room, id);
    }
    std::optional<WallRect> operator()(const WallPoint& point) const {
        return WallRect{point, point};
    }
    std::optional<WallRect> operator()(WallCorner corner) const {
        return (*this)(corner_of(geometry::bounds(room.outline), corner));
    }
    std::optional<WallRect> operator()(const WallRect& region) const { return region; }
};

}  // namespace

std::optional<WallRect> place_of(const wall::Room& room, const wall::Target& target) {
    return std::visit(PlaceOf{room}, target);
}

}  // namespace wallwright::arrange
