// Furniture, fixtures and the outline's corners that the pointer moves or resizes.
#pragma once

#include "desk/drag.h"
#include "desk/hit.h"

#include <cstddef>

namespace wallwright::desk {

inline constexpr double kLeastSide = 20;  ///< mm that resizing leaves of a side.

struct ThingDrag {
    Thing thing;                           ///< Furniture or a fixture.
    geometry::Rect<geometry::Wall> place;  ///< When the drag began, as below.
};
struct ResizeDrag {
    Handle handle;
    geometry::Rect<geometry::Wall> place;
};
struct CornerDrag {
    std::size_t corner = 0;
    geometry::Point<geometry::Wall> at;
};

Dragged follow(const wall::Project& kept, const ThingDrag& drag, const Pull& pull);
Dragged follow(const wall::Project& kept, const ResizeDrag& drag, const Pull& pull);
/// A corner that is no more is a Problem.
Dragged follow(const wall::Project& kept, const CornerDrag& drag, const Pull& pull);

}  // namespace wallwright::desk
