#include "draw/tint.h"

#include <algorithm>
#include <cmath>

namespace wallwright::draw {

using wall::Colour;

namespace {

constexpr double kWashLuminance = 0.74;

std::uint8_t mixed(std::uint8_t from, std::uint8_t to, double share) {
    return static_cast<std::uint8_t>(std::lround(from + (to - from) * share));
}

/// sRGB to linear light, WCAG 2.1, definition of relative luminance.
double linear(std::uint8_t channel) {
    const double value = channel / 255.0;
    return value <= 0.03928 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

}  // namespace

Colour mixed(Colour from, Colour to, double share) {
    return {mixed(from.red, to.red, share), mixed(from.green, to.green, share),
            mixed(from.blue, to.blue, share)};
}

Colour lighter(Colour colour, double share) {
    return mixed(colour, {255, 255, 255}, share);
}

Colour darker(Colour colour, double share) {
    return mixed(colour, {0, 0, 0}, share);
}

double luminance(Colour colour) {
    return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) +
           0.0722 * linear(colour.blue);
}

double contrast(Colour one, Colour other) {
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

Colour wash(Colour colour) {
    constexpr int kSteps = 50;
    for (int step = 0; step < kSteps; ++step)
        if (const Colour washed = lighter(colour, static_cast<double>(step) / kSteps);
            luminance(washed) >= kWashLuminance)
            return washed;
    return {255, 255, 255};
}

Paint own(Colour colour, double alpha) {
    return {Ink::own, colour, alpha};
}

}  // namespace wallwright::draw
