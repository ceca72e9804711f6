// The signs of the three severities, told apart without colour.
#pragma once

#include "pages/sheet.h"
#include "wall/finding.h"

namespace wallwright::pages {

inline constexpr double kSignRadius = 2.3;  ///< mm

draw::Ink ink_of(wall::Severity severity);

/// An octagon with a bar, a triangle with an exclamation mark, a disc with an i. `share` of its
/// usual size.
void add_sign(Shapes& shapes, wall::Severity severity, Spot middle, double share = 1);

}  // namespace wallwright::pages
