// One piece as it looks from the front: a soft shadow, the moulding with its mitres, mount, window
// and picture. One whose frame is not bought yet is an outline only.
#pragma once

#include "draw/furnishings.h"
#include "mounts/design/mount_design.h"
#include "wall/project.h"

#include <string>

namespace wallwright::draw {

/// Whether prints show their own pictures, and where their file names start from.
struct Pictures {
    bool shown = true;
    std::string folder;
};

/// What the moulding leaves to be seen of a frame as it hangs; it leaves something of any.
geometry::Rect<geometry::Wall> sight_of(const geometry::Rect<geometry::Wall>& place,
                                        const wall::Frame& frame);

/// The piece in its frame at `place`, which has its outside size, with the mount as designed.
void add_framed_mount(Shapes& shapes, const wall::Project& project, const wall::Piece& piece,
                      const geometry::Rect<geometry::Wall>& place,
                      const mounts::MountDesign& design, const Pictures& pictures);

/// The piece at `place`, which has its outside size. A mount whose prints are not there is blank.
void add_framed(Shapes& shapes, const wall::Project& project, const wall::Piece& piece,
                const geometry::Rect<geometry::Wall>& place, const Pictures& pictures);

}  // namespace wallwright::draw
