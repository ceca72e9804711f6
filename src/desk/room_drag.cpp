#include "desk/room_drag.h"

#include "desk/room_snap.h"
#include "edits/room.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
namespace wallwright::desk {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Vec;
using geometry::Wall;
using wall::Project;

Result<Project> with_place(const Project& kept, const wall::FurnitureId& id,
                           const Rect<Wall>& place) {
    return edits::change_furniture(kept, id, [&](wall::Furniture& one) { one.place = place; });
}
Result<Project> with_place(const Project& kept, const wall::FixtureId& id,
                           const Rect<Wall>& place) {
    return edits::change_fixture(kept, id, [&](wall::Fixture& one) { one.place = place; });
}
/// Pieces have drags of their own.
Result<Project> with_place(const Project& kept, const wall::PieceId&, const Rect<Wall>&) {
    return kept;
}

Result<Project> with_place(const Project& kept, const Thing& thing, const Rect<Wall>& place) {
    return std::visit([&](const auto& id) { return with_place(kept, id, place); }, thing);
}

/// The sides of the handle moved, but not past the opposite ones.
Rect<Wall> resized(const Rect<Wall>& place, const Handle& handle, Vec<Wall> by) {
    Rect<Wall> result = place;
    if (handle.x < 0)
        result.min.x = std::min(place.min.x + by.x, place.max.x - kLeastSide);
    if (handle.x > 0)
        result.max.x = std::max(place.max.x + by.x, place.min.x + kLeastSide);
    if (handle.y < 0)
        result.min.y = std::min(place.min.y + by.y, place.max.y - kLeastSide);
    if (handle.y > 0)
        result.max.y = std::max(place.max.y + by.y, place.min.y + kLeastSide);
    return result;
}

constexpr double kOnFloor = 0.5;  // mm: what stands nearer to the floor stands on it

/// Furniture and doors stand on the floor and are only shifted along it.
bool stands(const Project& kept, const Thing& thing, const Rect<Wall>& place) {
    const double floor = geometry::bounds(kept.room.outline).bottom();
    if (std::abs(place.bottom() - floor) > kOnFloor)
        return false;
    const auto* id = std::get_if<wall::FixtureId>(&thing);
    const auto fixture = std::ranges::find_if(
        kept.room.fixtures, [id](const wall::Fixture& one) { return id && one.id == *id; });
    return id == nullptr ||
           (fixture != kept.room.fixtures.end() && fixture->type == wall::FixtureType::door);
}

/// What the handle cannot move takes no part in the pull.
Pull along_handle(Pull pull, const Handle& handle) {
    if (handle.x == 0)
        pull.by.x = 0;
    if (handle.y == 0)
        pull.by.y = 0;
    return pull;
}

}  // namespace

Dragged follow(const Project& kept, const ThingDrag& drag, const Pull& pull) {
    Course course = course_of(pull);
    if (stands(kept, drag.thing, drag.place)) {
        course.by.y = 0;
        course.free_y = false;
    }
    RoomWish wish{drag.place.moved(course.by), drag.thing};
    wish.reach = pull.reach;
    wish.free_x = course.free_x;
    wish.free_y = course.free_y;
    Snapped snapped = snap_in_room(kept, wish);
    const Rect<Wall> place = drag.place.moved(settled(drag.place.min, course, snapped));

    Dragged dragged{with_place(kept, drag.thing, place),
                    fmt::format("Move {}", title_of(kept, drag.thing)),
                    {}};
    dragged.showing.guides = std::move(snapped.guides);
    dragged.showing.measures = measures_around(kept, {}, place);
    return dragged;
}

Dragged follow(const Project& kept, const ResizeDrag& drag, const Pull& pull) {
    const Handle& handle = drag.handle;
    const Course course = course_of(along_handle(pull, handle));
    RoomWish wish{resized(drag.place, handle, course.by), handle.thing};
    wish.reach = pull.reach;
    wish.free_x = course.free_x && handle.x != 0;
    wish.free_y = course.free_y && handle.y != 0;
    wish.side_x = handle.x;
    wish.side_y = handle.y;
    Snapped snapped = snap_in_room(kept, wish);
    const Rect<Wall> place =
        resized(drag.place, handle, settled(point_of(handle, drag.place), course, snapped));

    Dragged dragged{with_place(kept, handle.thing, place),
                    fmt::format("Resize {}", title_of(kept, handle.thing)),
                    {}};
    dragged.showing.guides = std::move(snapped.guides);
    dragged.showing.measures = measures_of_size(kept, place);
    return dragged;
}

Dragged follow(const Project& kept, const CornerDrag& drag, const Pull& pull) {
    const Course course = course_of(pull);
    const Point<Wall> pulled = drag.at + course.by;
    Snapped snapped;
    if (drag.corner < kept.room.outline.corners.size())
        snapped = snap_corner(kept, drag.corner,
                              {{pulled, pulled}, {}, pull.reach, course.free_x, course.free_y});
    const Point<Wall> to = drag.at + settled(drag.at, course, snapped);

    Dragged dragged{edits::move_corner(kept, drag.corner, to), "Move a corner of the wall", {}};
    if (!dragged.project)
        return dragged;
    dragged.showing.guides = std::move(snapped.guides);
    dragged.showing.measures = measures_at_corner(*dragged.project, drag.corner);
    return dragged;
}

}  // namespace wallwright::desk
