// Where a thing goes before a person has given it a place.
#pragma once

#include "wall/project.h"

namespace wallwright::edits {

/// One of the usual size at its usual height above the floor, where it meets nothing else and as
/// near to the middle of the wall as that allows; in the middle where there is no such place.
geometry::Rect<geometry::Wall> usual_place(const wall::Project& project, wall::FurnitureType type);
geometry::Rect<geometry::Wall> usual_place(const wall::Project& project, wall::FixtureType type);

/// The lower left corner of a piece of that size in the middle of the wall, on the centre line.
geometry::Point<geometry::Wall> usual_place(const wall::Project& project, wall::Size outside);

}  // namespace wallwright::edits
