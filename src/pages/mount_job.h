// What one cutting sheet is about: a mount, and all pieces that want one cut the same way.
#pragma once

#include "mounts/design/mount_design.h"
#include "wall/project.h"

#include <string>
#include <vector>

namespace wallwright::pages {

struct MountJob {
    std::vector<const wall::Piece*> pieces;  ///< At least one, in the project's order.
    const wall::Mount* mount = nullptr;      ///< Of the first.
    /// Of the first; where it is for several, its prints go by "the print" or "print 1".
    mounts::MountDesign design;
};

/// Of all pieces whose mounts are still to be cut, those alike together.
std::vector<MountJob> mount_jobs(const wall::Project& project);

/// "Kelp and Dune".
std::string titles_of(const MountJob& job);
/// The same for a title; of many pieces the last are counted.
std::string short_titles_of(const MountJob& job);

/// "the blank", or "layer 2 of 3" from the top one.
std::string board_name(const MountJob& job, std::size_t layer);

}  // namespace wallwright::pages
