// What is left of a project for questions that do not depend on all of it.
#pragma once

#include "wall/project.h"

namespace wallwright::desk {

/// Without its title and what a layout is measured by: weights, and the target.
wall::Project without_aims(wall::Project project);

/// Without these, without the wall and where pieces hang on it, and without what may be bought or
/// is wished for.
wall::Project without_wall(wall::Project project);

}  // namespace wallwright::desk
