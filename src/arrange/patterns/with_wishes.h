// A plan in which the pieces that are wished somewhere are there.
#pragma once

#include "arrange/pattern.h"

namespace wallwright::arrange {

/// The plan with pieces that the wishes name swapped with others, one swap after the other as long
/// as a swap keeps the wishes better. The same plan where nothing is wished.
Plan with_wishes(const Task& task, Plan plan);

}  // namespace wallwright::arrange
