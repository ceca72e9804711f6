// Colours as an eye tells them apart.
#pragma once

#include "wall/colour.h"

namespace wallwright::mounts {

/// Between two sRGB colours (IEC 61966-2-1) as one sees them in daylight: the distance in CIE 1976
/// L*a*b* under D65 (ISO/CIE 11664-4). 0 for the same colour, 100 from black to white.
double colour_distance(wall::Colour one, wall::Colour other);

}  // namespace wallwright::mounts
