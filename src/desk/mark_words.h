// What the step hang says of one mark.
#pragma once

#include "hanging/marks.h"

#include <string>

namespace wallwright::desk {

/// In lines: its number and whose it is, as "Mark 3: Kelp, left hook"; where it goes; what tape,
/// level and pencil leave open; how far below the frame's top a hook's is.
std::string mark_words(const wall::Project& project, const hanging::Mark& mark);

}  // namespace wallwright::desk
