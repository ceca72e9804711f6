// What to call a thing in a sentence.
#pragma once

#include "wall/piece.h"
#include "wall/room.h"

#include <string>

namespace wallwright::wall {

/// A piece's title, or its id where it has none.
const std::string& title_of(const Piece& piece);

/// A thing's title, or "the sofa" where it has none.
std::string title_of(const Furniture& furniture);
std::string title_of(const Fixture& fixture);

}  // namespace wallwright::wall
