// One board of a mount as it is marked and cut, from behind; the card of floating prints from the
// front, since its marks are made on its face.
#pragma once

#include "draw/mount_front.h"
#include "mounts/design/back_marks.h"

namespace wallwright::draw {

/// Layer 0 is the top one. The blank's lower left corner, as it lies, is the origin. The lines to
/// draw run past the corners so that a cross stands at each; the cuts are heavier, and beside each
/// an arrow with its number says from which cross to which; where the face's opening comes out of a
/// bevel is a hidden line.
///
/// With `measures`: distances from the blank's own edges to each line, both diagonals of the blank
/// and of each window, which edge is up. Windows that share their lines share their figures.
WallDrawing mount_back(const mounts::MountDesign& design, std::size_t layer, units::LengthUnit unit,
                       const BenchOptions& options);

}  // namespace wallwright::draw
