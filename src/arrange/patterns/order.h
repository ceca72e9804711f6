// The order of the pieces of one band: the same to both sides of its middle, as nearly as unlike
// pieces can be.
#pragma once

#include "arrange/patterns/bands.h"

namespace wallwright::arrange {

enum class Order {
    large_inside,   ///< Falling away to both ends.
    large_outside,  ///< The small ones between two large ends.
    alternating     ///< Upright ones and oblong ones in turn.
};

/// Like is set opposite like; the pair's larger one goes to the lighter side. Large is what is
/// thick in the band's direction.
std::vector<std::uint32_t> in_order(const Task& task, std::vector<std::uint32_t> items,
                                    Direction direction, Order order);

}  // namespace wallwright::arrange
