// What one needs at the cutting table: for each mount its boards from behind with every figure, the
// steps to tick off, and templates at true size where the paper is large enough.
#pragma once

#include "draw/drawing.h"
#include "pages/paper.h"
#include "wall/project.h"

#include <vector>

namespace wallwright::pages {

/// For each mount that is still to be cut; pieces whose mounts are cut alike share their sheets.
/// Boards are drawn to the largest standard scale that leaves room for all figures and takes no
/// more sheets than a smaller one. Without the sheets' numbers.
std::vector<draw::PageDrawing> mount_sheets(const wall::Project& project, Paper paper);

}  // namespace wallwright::pages
