// A group brought onto the centre line.
#pragma once

#include "edits/pieces.h"

namespace wallwright::desk {

/// All of the pieces up or down alike until the centre of their bounds is at the centre height of
/// the style, to the 0.01 mm that a file keeps. A fixed one among them is a Problem.
Result<wall::Project> centred(wall::Project project, edits::PieceIds group);

/// The furniture that a group of these bounds reads with: below it, the one whose middle is nearest
/// to the group's. Null where nothing stands there.
const wall::Furniture* furniture_below(const wall::Project& project,
                                       const geometry::Rect<geometry::Wall>& group);

/// All of the pieces aside alike until the centre of their bounds is over that of the furniture
/// below them, which must be there.
Result<wall::Project> centred_over(wall::Project project, edits::PieceIds group);

}  // namespace wallwright::desk
