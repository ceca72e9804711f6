// The sides of a wall by what they meet: ceiling, floor, the next wall.
#pragma once

#include "wall/room.h"

#include <optional>
#include <vector>

namespace wallwright::hanging {

struct OutlineEdges {
    std::vector<geometry::Segment<geometry::Wall>> ceiling;  ///< Each running to the right.
    std::vector<geometry::Segment<geometry::Wall>> floor;    ///< Each running to the right.
    std::vector<geometry::Segment<geometry::Wall>>
        ends;  ///< Upright at the wall's left or right, running up.
};

/// Sides that are neither (a riser of a stair, the underside of an overhang) are left out.
OutlineEdges edges_of(const geometry::Polygon& outline);

/// Rectangles that between them hold every point of a side running to the right: one for a level
/// side, steps of at most `step` mm of height for a sloping one.
std::vector<geometry::Rect<geometry::Wall>> steps_along(
    const geometry::Segment<geometry::Wall>& side, double step);

/// From the lowest floor to the highest ceiling anywhere between two places across the wall, mm;
/// empty beside the wall.
std::optional<geometry::Span> height_between(const geometry::Polygon& outline, double left,
                                             double right);

/// From the leftmost to the rightmost place of the wall anywhere between two heights, mm; empty
/// above or below the wall.
std::optional<geometry::Span> width_between(const geometry::Polygon& outline, double bottom,
                                            double top);

}  // namespace wallwright::hanging
