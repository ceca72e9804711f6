#include "mounts/match/lab.h"

#include <cmath>

namespace wallwright::mounts {

namespace {

struct Lab {
    double lightness = 0;
    double a = 0;
    double b = 0;
};

/// The light of an 8-bit value, 0 to 1.
double linear(std::uint8_t value) {
    const double coded = value / 255.0;
    return coded <= 0.04045 ? coded / 12.92 : std::pow((coded + 0.055) / 1.055, 2.4);
}

/// The standard's cube root with its straight start near black, of a share of white.
double curve(double ratio) {
    constexpr double kStart = 216.0 / 24389;
    return ratio > kStart ? std::cbrt(ratio) : ratio * 841 / 108 + 4.0 / 29;
}

Lab lab_of(wall::Colour colour) {
    const double red = linear(colour.red);
    const double green = linear(colour.green);
    const double blue = linear(colour.blue);
    // Divided by the white of D65, which is what red, green and blue at 1 give.
    const double x = curve((0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.9505);
    const double y = curve(0.2126 * red + 0.7152 * green + 0.0722 * blue);
    const double z = curve((0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.0890);
    return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

}  // namespace

double colour_distance(wall::Colour one, wall::Colour other) {
    const Lab from = lab_of(one);
    const Lab to = lab_of(other);
    return std::hypot(from.lightness - to.lightness, from.a - to.a, from.b - to.b);
}

}  // namespace wallwright::mounts
