// What to call a thing in a sentence.
#pragma once

#include "wall/project.h"

#include <string>

namespace wallwright::wall {

/// A piece's title, or its id where it has none.
const std::string& title_of(const Piece& piece);
/// The same for the piece of this id, or the id where there is none.
std::string title_of(const Project& project, const PieceId& id);

/// A thing's title, or "the sofa" where it has none.
std::string title_of(const Furniture& furniture);
std::string title_of(const Fixture& fixture);

}  // namespace wallwright::wall
