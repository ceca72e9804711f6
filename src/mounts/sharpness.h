// Whether a photograph has enough pixels for the size of its print and the distance one looks from.
#pragma once

#include "units/length.h"
#include "wall/piece.h"

#include <optional>
#include <string>

namespace wallwright::mounts {

/// What a good eye tells apart, radians: one minute of arc, which is 20/20.
inline constexpr double kArcMinute = 3.14159265358979323846 / (180 * 60);

/// Beyond how many pixels per inch an eye sees no difference from `distance` mm: one pixel seen
/// under the angle. 3438 over the distance in inches.
double pixels_resolved(double distance, double angle = kArcMinute);

/// From how many mm on an eye no longer tells pixels apart of which there are so many per inch.
double distance_resolved(double pixels_per_inch, double angle = kArcMinute);

/// mm from which one looks at a picture of this size: 1.5 times its diagonal, the nearer end of
/// the usual 1.5 to 2; common practice.
double usual_viewing_distance(geometry::Size size);

/// With the picture's longer side along the print's and the paper filled, so that what is too much
/// in one direction falls away.
double pixels_per_inch(wall::PixelSize pixels, geometry::Size print);

struct Sharpness {
    double pixels_per_inch = 0;
    double distance = 0;   ///< mm from which it is looked at.
    double resolved = 0;   ///< Pixels per inch that an eye resolves from there.
    bool soft = false;     ///< There are fewer.
    geometry::Size sharp;  ///< The largest size of its shape that looks sharp from there, mm.
    std::string text;      ///< One sentence; says what to do where it is soft.
    bool operator==(const Sharpness&) const = default;
};

/// From `distance` mm, the usual viewing distance where there is none. Empty where the print's
/// pixels are not known.
std::optional<Sharpness> sharpness_of(const wall::Print& print, units::LengthUnit unit,
                                      std::optional<double> distance = {});

}  // namespace wallwright::mounts
