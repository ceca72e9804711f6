// Where the lines of a hatch run, for painters that cannot clip to a polygon.
#pragma once

#include "geometry/polygon.h"

#include <vector>

namespace wallwright::draw {

using Area = std::vector<geometry::Point<geometry::Wall>>;

/// The parts of lines rising at 45 degrees to the right, `spacing` mm apart (more than 0), that are
/// in any of the areas and in `within`. Areas are polygons, all of them the same way round; where
/// lines lie depends on the areas alone. Nothing for areas without size.
std::vector<geometry::Segment<geometry::Wall>> hatch_lines(
    const std::vector<Area>& areas, double spacing, const geometry::Rect<geometry::Wall>& within);

}  // namespace wallwright::draw
