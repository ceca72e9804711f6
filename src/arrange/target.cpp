// Where the things are that a group can grow toward.
#include "arrange/grow.h"
#include "wall/find_in.h"

#include <variant>

namespace wallwright::arrange {

namespace {

using wall::WallCorner;

template <class Things, class Id>
std::optional<WallRect> place_in(const Things& things, const Id& id) {
    const auto* thing = wall::find_in(things, id);
    return thing == nullptr ? std::nullopt : std::optional(thing->place);
}

WallPoint corner_of(const WallRect& bounds, WallCorner corner) {
    const bool left = corner == WallCorner::top_left || corner == WallCorner::bottom_left;
    const bool top = corner == WallCorner::top_left || corner == WallCorner::top_right;
    return {left ? bounds.left() : bounds.right(), top ? bounds.top() : bounds.bottom()};
}

struct PlaceOf {
    const wall::Room& room;

    std::optional<WallRect> operator()(const wall::FurnitureId& id) const {
        return place_in(room.furniture, id);
    }
    std::optional<WallRect> operator()(const wall::FixtureId& id) const {
        return place_in(room.fixtures, id);
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
