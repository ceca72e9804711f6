// Where the windows of a mount are, or would be, placed by hand.
#pragma once

#include "mounts/design/mount_design.h"

#include <vector>

namespace wallwright::desk {

/// Corners of the windows of the top layer, or of prints that float, as they lie; none is less than
/// 0.
std::vector<wall::FromCorner> corners_of(const mounts::MountDesign& design);

/// Every window as far away from that side, in mm, as makes this border wider by `more`.
std::vector<wall::FromCorner> corners_for_border(const mounts::MountDesign& design,
                                                 double mounts::Borders::*border, double more);

/// The same windows about the middles that those of `before` have; none is less than 0.
std::vector<wall::FromCorner> corners_about(const mounts::MountDesign& design,
                                            const mounts::MountDesign& before);

/// For one window more, mm wide: a bar to the right of all that there are, as far as the blank
/// goes, and in line with the uppermost.
wall::FromCorner corner_beside(const mounts::MountDesign& design, double bar, double width);

}  // namespace wallwright::desk
