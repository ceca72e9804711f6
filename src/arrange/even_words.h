// What even gaps could not do, in sentences that the command line and the app share.
#pragma once

#include "arrange/even_wall.h"

#include <string>
#include <vector>

namespace wallwright::arrange {

/// Gaps that came out otherwise than wanted, lines that stay apart and pieces that are not clear,
/// in this order, a sentence each with its reason; lengths in `unit`. Empty when all was done.
std::vector<std::string> shortfalls(const EvenedWall& evened, units::LengthUnit unit);

/// "Every gap between neighbours is 60 mm."
std::string all_even_words(const EvenedWall& evened, units::LengthUnit unit);

}  // namespace wallwright::arrange
