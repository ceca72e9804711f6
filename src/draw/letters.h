// Pieces go by letters on paper, since numbers are for marks: ISO 6433 allows capitals as item
// references.
#pragma once

#include "wall/project.h"

#include <cstddef>
#include <string>

namespace wallwright::draw {

/// "A" to "Z", then "AA", "AB" and on.
std::string letter(std::size_t index);
/// By the piece's place in the project; empty for an id that is not there.
std::string letter_of(const wall::Project& project, const wall::PieceId& id);

}  // namespace wallwright::draw
