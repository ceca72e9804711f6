// The wall on the day, as simple as can be: what hangs, what goes up, and the one mark that is to
// be made with the two lines it is measured by.
#pragma once

#include "desk/hang/companion.h"
#include "draw/drawing.h"

#include <string>

namespace wallwright::desk {

/// At `scale` mm on paper for one mm of wall. `pictures` is where the prints' file names start
/// from. Empty before the first follow().
draw::WallDrawing day_picture(const Companion& day, const std::string& pictures, double scale);

}  // namespace wallwright::desk
