// What is wished of the arrangement, as small signs over the pieces.
#pragma once

#include "desk/hit.h"
#include "desk/overlay_lines.h"

#include <vector>

namespace wallwright::desk {

/// A link between two with the sign for side by side or apart, a ring for the middle, an arrow for
/// low and high, a crossed circle with a dotted line to what a piece is not to hang over.
void add_wishes(Overlay& overlay, const wall::Project& project,
                const std::vector<Waiting>& waiting);

}  // namespace wallwright::desk
