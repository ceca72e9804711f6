// Furnished walls, as people have them, for tests of what is drawn and printed.
#pragma once

#include "wall/project.h"

namespace wallwright::scenes {

/// An attic over a sofa and a floor lamp: five pieces hang, two are planned beside them, two wait;
/// strips, hooks and cords; a switch and a socket by the door side; a ceiling that slopes down at
/// the right.
wall::Project attic_gallery();

/// A wall of so many planned pieces in rows with equal gaps, all on strips.
wall::Project salon_of(int pieces);

/// A wall up a stair of eight steps, with three planned pieces that climb it.
wall::Project stair_gallery();

}  // namespace wallwright::scenes
