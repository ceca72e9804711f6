// What to measure between marks before anything goes into the wall.
#pragma once

#include "hanging/marks.h"

namespace wallwright::hanging {

/// As MarksTable::checks: `places` are where the marks lie once rounded, in the order of `marks`.
/// The other of two earlier marks is the nearest of those that are seen 30 degrees or more apart
/// from the first, or else the one that is farthest apart, and never under 15 degrees (our choice:
/// flatter triangles fix nothing). Along a rail there is only the mark before.
std::vector<CheckMeasure> checks_between(std::span<const Mark> marks,
                                         std::span<const geometry::Point<geometry::Wall>> places,
                                         double step);

}  // namespace wallwright::hanging
