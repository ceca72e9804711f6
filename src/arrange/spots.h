// Where one more piece can touch a group: exactly the gap from a neighbour, and in line with
// something.
#pragma once

#include "arrange/task.h"

#include <span>
#include <vector>

namespace wallwright::arrange {

/// Every place for the item where it faces at least one piece of the layout at the wanted gap,
/// lines up with an edge or axis of a piece near by (or fills a corner between two at the gap), is
/// allowed by the wall and clear of all pieces. No place twice; in a fixed order.
void touching_spots(const Task& task, std::span<const Spot> layout, std::uint32_t item,
                    std::vector<WallRect>& out);

}  // namespace wallwright::arrange
