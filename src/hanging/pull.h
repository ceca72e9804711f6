// The pull off the wall on a fixing whose packet rates only the load down the wall.
#pragma once

#include "hanging/fixings.h"

namespace wallwright::hanging {

/// Share of the load down the wall up to which the pull off it is taken to be within the rating: at
/// a quarter it adds 3 % to the load in all. Our choice; that packets rate the load down the wall
/// and not the pull off it: a rule-of-thumb page on screw and stud sizing.
inline constexpr double kPullShare = 0.25;

/// much: more than kPullShare of the load down the wall. too_much: more than that load.
enum class Pull { slight, much, too_much };

/// Of strips, and of nails of which it is not known what they hold in wood; screws, rail hooks and
/// nails in wood are slight here. Rounding is forgiven.
Pull pull_on(const Fixing& fixing);

}  // namespace wallwright::hanging
