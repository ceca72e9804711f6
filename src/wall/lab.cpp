#include "wall/lab.h"

#include <array>
#include <cmath>
#include <cstddef>

namespace wallwright::wall {

namespace {

/// The light of each 8-bit value, 0 to 1.
std::array<double, 256> make_linear() {
    std::array<double, 256> linear{};
    for (std::size_t i = 0; i < linear.size(); ++i) {
        const double coded = static_cast<double>(i) / 255;
        linear[i] = coded <= 0.04045 ? coded / 12.92 : std::pow((coded + 0.055) / 1.055, 2.4);
    }
    return linear;
}

/// The standard's cube root with its straight start near black, of a share of white.
double curve(double ratio) {
    constexpr double kStart = 216.0 / 24389;
    return ratio > kStart ? std::cbrt(ratio) : ratio * 841 / 108 + 4.0 / 29;
}

constexpr std::size_t kSteps = 4096;

std::array<double, kSteps + 2> make_curve() {
    std::array<double, kSteps + 2> values{};
    for (std::size_t i = 0; i < values.size(); ++i)
        values[i] = curve(static_cast<double>(i) / kSteps);
    return values;
}

/// The curve between its nearest steps: the search cannot wait for cube roots. Right to 0.0005 of
/// lightness.
double quick_curve(double ratio) {
    static const std::array<double, kSteps + 2> kCurve = make_curve();
    const double at = ratio * kSteps;
    const auto step = static_cast<std::size_t>(at);
    return kCurve[step] + (at - static_cast<double>(step)) * (kCurve[step + 1] - kCurve[step]);
}

}  // namespace

Lab lab_of(Colour colour) {
    static const std::array<double, 256> kLinear = make_linear();
    const double red = kLinear[colour.red];
    const double green = kLinear[colour.green];
    const double blue = kLinear[colour.blue];
    // Divided by the white of D65, which is what red, green and blue at 1 give.
    const double x = quick_curve((0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.9505);
    const double y = quick_curve(0.2126 * red + 0.7152 * green + 0.0722 * blue);
    const double z = quick_curve((0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.0890);
    return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

double difference_squared(const Lab& one, const Lab& other) {
    const double lightness = one.lightness - other.lightness;
    const double a = one.a - other.a;
    const double b = one.b - other.b;
    return lightness * lightness + a * a + b * b;
}

double colour_distance(Colour one, Colour other) {
    return std::sqrt(difference_squared(lab_of(one), lab_of(other)));
}

}  // namespace wallwright::wall
