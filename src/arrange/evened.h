// A found layout with its last gaps put right.
#pragma once

#include "arrange/elite.h"

namespace wallwright::arrange {

/// Moves the free pieces as little as makes the gaps even (spacing/even.h); the layout as it was
/// where that is no better or not allowed.
Found evened(const Task& task, Found found);

}  // namespace wallwright::arrange
