// What comes of pulling at a part of a mount: a window placed by hand, another overlap, other bars.
#pragma once

#include "base/problem.h"
#include "desk/bench/mount_part.h"
#include "desk/bench/mount_snap.h"
#include "wall/project.h"

#include <string>
#include <vector>

namespace wallwright::desk {

struct MountPull {
    geometry::Vec<mounts::Front> by;  ///< mm from the press to where the pointer is.
    bool free = false;                ///< Nothing snaps.
    double reach = 0;                 ///< mm within which a snap takes hold.
};

/// The state of a drag.
struct MountDragged {
    Result<wall::Project> project;
    std::string label;               ///< Of the step that it would be.
    std::string words;               ///< The number that changes: "Overlap 4 mm".
    std::vector<MountGuide> guides;  ///< Where it rests.
};

/// Pulls at a part of the mount of a piece, as it is in `project`, for every piece that has this
/// mount. A window as a whole goes where it is put. An edge between two windows in line changes the
/// bars between all of them; any other edge the overlap of every window, each about its own middle.
/// A piece without a mount that can be made is a broken contract.
MountDragged pull_mount(const wall::Project& project, const wall::PieceId& piece,
                        const MountPart& part, const MountPull& pull);

}  // namespace wallwright::desk
