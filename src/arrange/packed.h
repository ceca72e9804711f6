// A first layout for the free group: all pieces in as little room as can be.
#pragma once

#include "arrange/task.h"
#include "base/random.h"

#include <optional>

namespace wallwright::arrange {

/// The free pieces packed at the gap in a box of some proportion, and settled on the wall together
/// with what stays; nothing when there is no room for it as a whole. Neighbours may be farther
/// apart than the gap: what follows mends that.
std::optional<Layout> packed(const Task& task, Random& random);

}  // namespace wallwright::arrange
