// What stands before the wall and what is built into it, as an architect would sketch it. Each
// silhouette fills its rectangle and keeps parts that have a usual size (legs, handles, slats) near
// that size.
#pragma once

#include "draw/drawing.h"
#include "wall/room.h"

#include <vector>

namespace wallwright::draw {

using Shapes = std::vector<Shape<geometry::Wall>>;

/// In the furniture's own colour, or in the usual one of its type.
void add_furniture(Shapes& shapes, const wall::Furniture& furniture);
void add_fixture(Shapes& shapes, const wall::Fixture& fixture);

}  // namespace wallwright::draw
