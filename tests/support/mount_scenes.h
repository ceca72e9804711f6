// Walls of pieces whose mounts are still to be cut.
#pragma once

#include "wall/project.h"

#include <string>
#include <vector>

namespace wallwright::scenes {

/// A planned piece in a frame of its own with this mount, for one print or, where there are
/// several, with a window for each. Ids of frame, mount and piece are `id`; the prints' are "id-1"
/// and on. The reference is good until the next piece is added.
wall::Piece& add_with_mount(wall::Project& project, const std::string& id, geometry::Size outside,
                            wall::Mount mount, const std::vector<geometry::Size>& prints);

/// One of each: two layers about an upright print in a landscape frame, a row of three, a float, a
/// mount of three layers too large for any paper, a window cut straight on one sheet of paper,
/// four windows set by hand, and a board as large as a sheet of A4.
wall::Project mounts_to_cut();

}  // namespace wallwright::scenes
