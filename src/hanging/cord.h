// A cord over one hook or two: elementary statics, friction left out.
#pragma once

#include "base/problem.h"
#include "units/mass.h"

namespace wallwright::hanging {

/// What the geometry of a cord gives. Lengths in mm, angle in degrees above the horizontal.
struct Cord {
    double drop = 0;  ///< From the rings up to the hooks' bearing point.
    double angle_deg = 0;
    units::Newtons tension;        ///< In the cord.
    units::Newtons inward_pull;    ///< On each side of the frame.
    units::Newtons hook_down;      ///< On each hook.
    units::Newtons hook_sideways;  ///< On each hook, inward; 0 for one hook.
};

/// One hook: cos a = s/L, drop = sqrt((L/2)^2 - (s/2)^2), T = W/(2 sin a), pull = W/(2 tan a).
/// A cord not longer than the ring spacing is a Problem.
Result<Cord> over_one_hook(double ring_spacing, double cord_length, units::Newtons weight);

/// Two hooks h apart: cos a = (s - h)/(L - h), T = W/(2 sin a); each hook takes W/2 down and T(1 -
/// cos a) sideways. h must be less than the ring spacing and L longer than it.
Result<Cord> over_two_hooks(double ring_spacing, double hook_spacing, double cord_length,
                            units::Newtons weight);

}  // namespace wallwright::hanging
