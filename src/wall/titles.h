// What to call a thing in a sentence.
#pragma once

#include "wall/project.h"

#include <cstddef>
#include <limits>
#include <span>
#include <string>

namespace wallwright::wall {

/// A piece's title, or its id where it has none.
const std::string& title_of(const Piece& piece);
/// The same for the piece of this id, or the id where there is none.
std::string title_of(const Project& project, const PieceId& id);
/// The same, with " (not bought yet)" behind it where its frame is wished for: in lists of what to
/// hang.
std::string title_to_hang(const Piece& piece);
std::string title_to_hang(const Project& project, const PieceId& id);

/// A print's title, or its id where it has none or is not there.
std::string title_of(const Project& project, const PrintId& id);

/// A sheet's title, or its id where it has none.
const std::string& title_of(const CardSheet& sheet);

/// A thing's title, or "the sofa" where it has none.
std::string title_of(const Furniture& furniture);
std::string title_of(const Fixture& fixture);

/// A thing's title, or its id where it is not there; "the top left corner", "the point 3800 mm
/// across and 1500 mm up", "the part of the wall from 3000 to 3800 mm across and 1200 to 1900 mm
/// up".
std::string title_of(const Project& project, const Target& target, units::LengthUnit unit);

/// "Kelp", "Kelp and Dune", "Kelp, Dune and Tide"; "" for none. Of more than `most`, 2 or more, the
/// last are counted: "Kelp, Dune and 3 more".
std::string listed(std::span<const std::string> titles,
                   std::size_t most = std::numeric_limits<std::size_t>::max());
/// The pieces' titles, listed.
std::string titles_of(const Project& project, std::span<const PieceId> pieces,
                      std::size_t most = std::numeric_limits<std::size_t>::max());

}  // namespace wallwright::wall
