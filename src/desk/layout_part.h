// What small pictures of layouts show of the wall, and how large.
#pragma once

#include "desk/layout_choice.h"
#include "geometry/transform.h"

#include <span>

namespace wallwright::desk {

/// All that any of the layouts covers, with the top of the furniture that they read with, and some
/// air; within the wall's bounds. The same for all, so that they can be compared.
geometry::Rect<geometry::Wall> shown_part(const arrange::Task& task,
                                          std::span<const RankedLayout> layouts);

/// All of the part in the area, as large as it fits; the gap a whole number of pixels where that is
/// one or more, so that even gaps look even. In each direction the wall is in the middle where all
/// of it has room; else the part is, or so near as nothing beyond the wall is seen.
geometry::Transform<geometry::Wall, geometry::Screen> small_view(
    const geometry::Rect<geometry::Wall>& part, const geometry::Rect<geometry::Wall>& wall,
    const geometry::Rect<geometry::Screen>& area, double gap);

}  // namespace wallwright::desk
