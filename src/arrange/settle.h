// Where on the wall a finished block of pieces goes.
#pragma once

#include "arrange/task.h"

#include <optional>

namespace wallwright::arrange {

/// The middle that the group is to hang about: over the furniture it reads with, or else in the
/// middle of the wall; at the centre height, or as much higher or lower as the clearance above the
/// furniture asks for a group `height` mm high; under the ceiling and over the floor all the same.
WallPoint wanted_centre(const Task& task, double height);

/// `block` (free pieces with places that fit each other, anywhere) moved as a whole to where the
/// wall and the pieces that stay allow it, as near to the wanted centre as can be; where pieces
/// stay, to where it touches them at the gap and the score is best, or else as near as can be.
/// Together with what stays; nothing when there is no such place, or none was found in so much work
/// (on a wall of many corners that leave hardly any room).
std::optional<Layout> settle(const Task& task, const Layout& block);

}  // namespace wallwright::arrange
