// Where the timbers behind a hollow wall are, and how far a piece is from them.
#pragma once

#include "wall/room.h"

#include <optional>
#include <vector>

namespace wallwright::hanging {

/// mm of wood that must be left beside a screw so that it does not split off: twice the thickness
/// of a 5 mm screw (our choice).
inline constexpr double kStudEdge = 10;

/// True when a screw there meets the wood with kStudEdge left on both sides. `across` is mm from
/// the wall's left end.
bool on_stud(const wall::Studs& studs, double across);

/// The shortest move, mm to the right or less than 0 to the left, after which all of the places lie
/// on studs, as near to their middles as can be; nothing where no move does it. Places as above, at
/// least one.
std::optional<double> move_onto_studs(const wall::Studs& studs, const std::vector<double>& places);

}  // namespace wallwright::hanging
