// Asks the rules about a wall, for tests that look at one rule at a time.
#pragma once

#include "rules/assess.h"

#include <string_view>
#include <vector>

namespace wallwright::rules {

/// What assess() finds with the fixings and materials of scenes::small_catalogue().
std::vector<wall::Finding> findings_on(const wall::Project& project);

/// Of those, the findings of one rule, which must be in the table.
std::vector<wall::Finding> findings_of(std::string_view rule, const wall::Project& project);

/// The one finding of the rule; the test fails when there is none or more than one.
wall::Finding only_finding(std::string_view rule, const wall::Project& project);

/// A piece of the class that small fixings carry: acrylic before it, weighed at `kg`.
void make_light(wall::Project& project, const std::string& id, double kg);

/// Hung from a sawtooth on one nailed hook instead of strips.
void hang_on_a_nail(wall::Project& project, const std::string& id);

/// With rail hooks 20 mm wide, rated 10 kg, in the wall's own catalogue, and a rail 2200 mm up.
void hang_from_the_rail(wall::Project& project, const std::string& id, const wall::Hanger& hanger);

/// The piece of this id, to change it.
wall::Piece& piece_named(wall::Project& project, const std::string& id);

}  // namespace wallwright::rules
