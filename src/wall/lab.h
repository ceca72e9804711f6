// Colours as an eye tells them apart.
#pragma once

#include "wall/colour.h"

namespace wallwright::wall {

/// CIE 1976 L*a*b* (ISO/CIE 11664-4), under daylight D65.
struct Lab {
    double lightness = 0;  ///< 0 to 100.
    double a = 0;
    double b = 0;
};

/// From sRGB: IEC 61966-2-1, with its matrix to XYZ.
Lab lab_of(Colour colour);

/// Square of the CIE 1976 colour difference; 2.3 squared is just seen (Mahy, Van Eycken,
/// Oosterlinck, Color Research and Application 19, 1994; from memory).
double difference_squared(const Lab& one, const Lab& other);
/// Its root, of two colours of sRGB: 0 for the same one, 100 from black to white.
double colour_distance(Colour one, Colour other);

}  // namespace wallwright::wall
