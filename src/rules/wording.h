// How findings speak: names, lists and numbers as a person at home reads them.
#pragma once

#include "rules/scene.h"
#include "wall/titles.h"

#include <string>
#include <vector>

namespace wallwright::rules {

/// The title, or the id where there is none.
std::string title_of(const OnWall& one);

/// "Kelp", "Kelp and Dune", "Kelp, Dune and Tide", "Kelp, Dune, Tide and 4 more".
std::string titles_of(const std::vector<const OnWall*>& pieces);
/// "Kelp" for a single piece, else "the group of Kelp and Dune".
std::string title_of(const Scene& scene, const spacing::Group& group);

std::vector<wall::PieceId> ids_of(const std::vector<const OnWall*>& pieces);
geometry::Rect<geometry::Wall> bounds_of(const std::vector<const OnWall*>& pieces);

/// "42 mm" in the project's unit; "less than 1/16 in" for a length that the unit would show as
/// nothing.
std::string length_text(const Scene& scene, double mm);
/// "40 to 75 mm".
std::string range_text(const Scene& scene, double low, double high);
/// "over the 75 mm" or "under the 40 mm"; "just over the" where the unit shows both numbers alike.
std::string passed_text(const Scene& scene, double measured, double bound);
std::string mass_text(const Scene& scene, units::Kilograms mass);

/// "strip", "hook", "screw" or "rail hook".
std::string_view word_for(wall::FixingKind kind);

}  // namespace wallwright::rules
