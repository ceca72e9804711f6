// A drawing put elsewhere.
#pragma once

#include "draw/drawing.h"

namespace wallwright::desk {

draw::WallDrawing moved(draw::WallDrawing drawing, geometry::Vec<geometry::Wall> by);

}  // namespace wallwright::desk
