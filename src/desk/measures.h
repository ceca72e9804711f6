// Measures that are shown while something moves.
#pragma once

#include "geometry/polygon.h"
#include "wall/project.h"

#include <string>
#include <vector>

namespace wallwright::desk {

struct LiveMeasure {
    geometry::Segment<geometry::Wall> line;
    std::string figure;  ///< In the project's unit: "60", "25 above the centre line".
};

/// Distances from a rectangle to what it faces left, right, below and above, whichever is nearest:
/// another piece, furniture, a fixture, the wall's edge; and from the centre of the group of the
/// first moving piece to the centre line. What touches has none.
std::vector<LiveMeasure> measures_around(const wall::Project& project,
                                         const std::vector<wall::PieceId>& moving,
                                         const geometry::Rect<geometry::Wall>& place);

/// The width and the height across the thing, where no handles are in the way.
std::vector<LiveMeasure> measures_of_size(const wall::Project& project,
                                          const geometry::Rect<geometry::Wall>& place);

/// The lengths of the outline's two sides that meet in a corner.
std::vector<LiveMeasure> measures_at_corner(const wall::Project& project, std::size_t corner);

}  // namespace wallwright::desk
