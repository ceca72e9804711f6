// What nails resist when they are pulled straight out of wood.
#pragma once

#include "units/mass.h"

namespace wallwright::hanging {

/// The specific gravity of the lightest wood that studs are made of: Engelmann spruce and Eastern
/// white pine 0.35 (USDA Forest Products Laboratory, Wood Handbook).
inline constexpr double kStudGravity = 0.35;

/// What one nail may bear, a fifth of what pulls it out: F = 1380 G^(5/2) D lb for each inch in the
/// wood (USDA Forest Products Laboratory, FPL-0100, as cited by an engineering reference). Diameter
/// and depth in mm, more than 0.
units::Newtons nail_withdrawal(double specific_gravity, double diameter, double depth);

}  // namespace wallwright::hanging
