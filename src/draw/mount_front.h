// A mount in its frame as it will look, with its borders measured as seen and as cut.
#pragma once

#include "draw/drawing.h"
#include "draw/framed.h"
#include "mounts/design/mount_design.h"

namespace wallwright::draw {

struct BenchOptions {
    double scale = 0.5;  ///< mm on paper for one mm of the mount; figures are kept apart for it.
    bool measures = true;
    Pictures pictures;
};

/// The frame's lower left corner, as it hangs, is the origin. With the print covered behind each
/// window and the blank's edge behind the lip as hidden lines (ISO 128-2, 02.1). With `measures`:
/// the borders as seen on the card, where they have room; what is cut of blank, windows and bars
/// below and to the left; the frame's own size above and to the right.
WallDrawing mount_front(const wall::Project& project, const wall::Piece& piece,
                        const mounts::MountDesign& design, const BenchOptions& options);

/// From a blank's own coordinates, y down from its top edge, to those of that drawing.
geometry::Rect<geometry::Wall> in_mount_front(const wall::Project& project,
                                              const wall::Piece& piece,
                                              const mounts::MountDesign& design,
                                              const geometry::Rect<mounts::Front>& place);

}  // namespace wallwright::draw
