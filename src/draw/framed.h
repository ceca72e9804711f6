// One piece as it looks from the front: a soft shadow, the moulding with its mitres, mount, window
// and picture. One whose frame is not bought yet is an outline only.
#pragma once

#include "draw/furnishings.h"
#include "wall/project.h"

#include <string>

namespace wallwright::draw {

/// Whether prints show their own pictures, and where their file names start from.
struct Pictures {
    bool shown = true;
    std::string folder;
};

/// The piece at `place`, which has its outside size.
void add_framed(Shapes& shapes, const wall::Project& project, const wall::Piece& piece,
                const geometry::Rect<geometry::Wall>& place, const Pictures& pictures);

}  // namespace wallwright::draw
