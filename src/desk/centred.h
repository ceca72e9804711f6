// A group brought onto the centre line.
#pragma once

#include "edits/pieces.h"

namespace wallwright::desk {

/// All of the pieces up or down alike until the centre of their bounds is at the centre height of
/// the style, to the 0.01 mm that a file keeps. A fixed one among them is a Problem.
Result<wall::Project> centred(wall::Project project, edits::PieceIds group);

}  // namespace wallwright::desk
