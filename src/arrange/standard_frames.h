// The frames that shops have, each size once.
#pragma once

#include "wall/project.h"

#include <span>
#include <string>
#include <vector>

namespace wallwright::arrange {

struct StandardFrame {
    std::string size_name;
    wall::Frame frame;     ///< Upright: the shorter side is its width.
    bool at_home = false;  ///< The person's own, or of whole units of their system.
};

/// A frame for each of the project's own sizes and the catalogue's: a usual one that takes a sheet
/// of this size, so that mounts::blank_size() is the size. Of sizes that differ by 6 mm or
/// less both ways only one is there: the person's own, else one in whole units of `project.unit`'s
/// system, else the first.
std::vector<StandardFrame> standard_frames(const wall::Project& project,
                                           const wall::Catalogue& catalogue);

}  // namespace wallwright::arrange
