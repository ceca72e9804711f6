// The boards of a mount at true size, for a machine that cuts them.
#pragma once

#include "pages/mount_job.h"

#include <string>
#include <vector>

namespace wallwright::pages {

/// One file.
struct BoardSvg {
    std::string name;  ///< "kelp-layer-1.svg".
    std::string svg;
};

/// A board a file, as it lies face down, in mm: for each window the line to cut along, which for a
/// bevel is the opening at the back, then the blank's outline, since what is cut out first still
/// lies firm. Closed paths without fills. Names start with `stem`.
std::vector<BoardSvg> mount_svgs(const mounts::MountDesign& design, const std::string& stem,
                                 const std::string& title);

/// Of every piece whose mount is still to be cut and can be, by its id.
std::vector<BoardSvg> mount_svgs(const wall::Project& project);

}  // namespace wallwright::pages
