// The groups that hang today, and how one more place stands to them and to the furniture.
#pragma once

#include "arrange/task.h"

#include <optional>
#include <span>
#include <vector>

namespace wallwright::arrange {

/// What stays, group by group, left to right.
std::vector<Layout> standing_groups(const Task& task);

using geometry::distance_between;
/// mm from the nearest piece of the layout, which holds one at least; 0 when they meet.
double distance_between(std::span<const Spot> layout, const WallRect& place);

/// True when the place faces a piece of the layout at exactly the gap, by a quarter of the shorter
/// of the two sides at least: less looks like a piece that slipped (our choice).
bool touches(const Task& task, std::span<const Spot> layout, const WallRect& place);

/// How much of the way from the pieces, one at least, to the target the place takes back, 0 to 1;
/// within the gap of it is all the way. 0 without a target.
double leads_on(const Task& task, std::span<const Spot> pieces, const WallRect& place,
                const std::optional<WallRect>& target);

/// How far the place is from hanging above the furniture that groups read with, 0 to 1: 0 with the
/// clearance kept, 1 from its top down. Pieces of a group keep it close beside the furniture too.
double sunk_below_furniture(std::span<const Beneath> furniture, const WallRect& place);

}  // namespace wallwright::arrange
