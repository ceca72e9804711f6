// A padlock on a disc: what a person keeps where it is.
#pragma once

#include "draw/drawing.h"

#include <vector>

namespace wallwright::desk {

/// In the board's mm; `unit` mm of the board are one mm on paper. An open one is paler.
std::vector<draw::Shape<geometry::Wall>> lock_sign(geometry::Point<geometry::Wall> at, double unit,
                                                   bool shut);

}  // namespace wallwright::desk
