#include "edits/usual_place.h"

#include "edits/room.h"
#include "geometry/floor_line.h"

#include <algorithm>

namespace wallwright::edits {

namespace {

using geometry::Polygon;
using geometry::Wall;
using wall::Project;
using Place = geometry::Rect<Wall>;

double floor_at(const Polygon& outline, double x) {
    const auto span = geometry::vertical_span(outline, x);
    return span ? span->low : 0;
}

bool is_free(const Project& project, const Place& place) {
    const auto meets = [&place](const auto& thing) {
        return geometry::overlaps(thing.place, place);
    };
    return std::ranges::none_of(project.room.furniture, meets) &&
           std::ranges::none_of(project.room.fixtures, meets) &&
           std::ranges::none_of(wall::placed_pieces(project), meets);
}

/// `up`: mm above the floor.
Place free_place(const Project& project, wall::Size size, double up) {
    constexpr double kStep = 50;  // mm
    const Polygon& outline = project.room.outline;
    const Place wall = geometry::bounds(outline);
    const double most = (wall.width() - size.width) / 2;
    const auto at = [&](double off) {
        const double middle = wall.centre().x + off;
        return Place::at({middle - size.width / 2, floor_at(outline, middle) + up}, size);
    };
    for (double off = 0; off <= most; off += kStep)
        for (const double side : {off, -off})
            if (is_free(project, at(side)))
                return at(side);
    return at(0);
}

}  // namespace

Place usual_place(const Project& project, wall::FurnitureType type) {
    return free_place(project, usual_size(type), 0);
}

Place usual_place(const Project& project, wall::FixtureType type) {
    return free_place(project, usual_size(type), usual_height(type));
}

geometry::Point<Wall> usual_place(const Project& project, wall::Size outside) {
    const double middle = geometry::bounds(project.room.outline).centre().x;
    return {middle - outside.width / 2, geometry::FloorLine(project.room.outline).at(middle) +
                                            project.style.centre_height - outside.height / 2};
}

}  // namespace wallwright::edits
