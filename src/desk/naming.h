// How steps and hindrances name what they are about.
#pragma once

#include "desk/selection.h"

#include <span>
#include <string>

namespace wallwright::desk {

/// "Kelp", or "3 pieces".
std::string name_of(const wall::Project& project, std::span<const wall::PieceId> pieces);
/// The same of what is selected: "the sofa" for furniture. Not for an empty selection.
std::string name_of(const wall::Project& project, const Selection& selection);

/// "3 hung, 2 planned, 1 waiting".
std::string counts_of(const wall::Project& project);

/// "Kelp hangs already; call it planned to move it". The piece must be fixed.
std::string why_fixed(const wall::Piece& piece);

/// "Move Kelp 40 mm up", in the project's unit.
std::string move_words(const wall::Project& project, const std::string& name,
                       geometry::Vec<geometry::Wall> by);

}  // namespace wallwright::desk
