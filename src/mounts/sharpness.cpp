#include "mounts/sharpness.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::mounts {

namespace {

using geometry::Size;
using units::kMmPerInch;
using units::LengthUnit;

/// Down to what the unit shows, so that the size in the sentence is not larger than the sharp one.
double shown_down(double mm, LengthUnit unit) {
    const double step = unit == LengthUnit::inch ? kMmPerInch / 16 : 1;
    return std::floor(mm / step + 1e-9) * step;
}

std::string size_text(Size size, LengthUnit unit) {
    return fmt::format("{} x {}", units::format_number(size.width, unit),
                       units::format_length(size.height, unit));
}

std::string text_of(const std::string& title, const Sharpness& seen, LengthUnit unit) {
    const std::string facts = fmt::format(
        "{} has {:.0f} pixels per inch, and from {} an eye resolves {:.0f}", title,
        seen.pixels_per_inch, units::format_length(std::round(seen.distance), unit), seen.resolved);
    if (!seen.soft)
        return fmt::format("{}: it will look sharp.", facts);
    const Size sharp{shown_down(seen.sharp.width, unit), shown_down(seen.sharp.height, unit)};
    return fmt::format(
        "{}: it will look soft; print it at {} at most, or look at it from {} or farther.", facts,
        size_text(sharp, unit),
        units::format_length(std::ceil(distance_resolved(seen.pixels_per_inch)), unit));
}

}  // namespace

double pixels_resolved(double distance, double angle) {
    return kMmPerInch / (distance * std::tan(angle));
}

double distance_resolved(double pixels_per_inch, double angle) {
    return kMmPerInch / (pixels_per_inch * std::tan(angle));
}

double usual_viewing_distance(Size size) {
    constexpr double kDiagonals = 1.5;
    return kDiagonals * std::hypot(size.width, size.height);
}

double pixels_per_inch(wall::PixelSize pixels, Size print) {
    const auto [fewer, more] = std::minmax(pixels.width, pixels.height);
    const auto [shorter, longer] = std::minmax(print.width, print.height);
    return kMmPerInch * std::min(fewer / shorter, more / longer);
}

std::optional<Sharpness> sharpness_of(const wall::Print& print, LengthUnit unit,
                                      std::optional<double> distance) {
    if (!print.pixels)
        return std::nullopt;
    Sharpness seen;
    seen.pixels_per_inch = pixels_per_inch(*print.pixels, print.size);
    seen.distance = distance.value_or(usual_viewing_distance(print.size));
    seen.resolved = pixels_resolved(seen.distance);
    seen.soft = seen.pixels_per_inch < seen.resolved;
    const double scale = seen.pixels_per_inch / seen.resolved;
    seen.sharp = {print.size.width * scale, print.size.height * scale};
    seen.text = text_of(print.title.empty() ? print.id.text : print.title, seen, unit);
    return seen;
}

}  // namespace wallwright::mounts
