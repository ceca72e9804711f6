#include "arrange/measures/all.h"
#include "arrange/measures/slope.h"
#include "arrange/measures/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::arrange {

namespace {

/// Holes of this share of the area of the pieces spoil a group: our choice.
constexpr double kSpoilt = 0.15;

/// What is between the two beyond the gap.
double area_of_hole(const spacing::Facing& pair, double gap) {
    return pair.place.size().area() * (1 - gap / pair.size);
}

double value(const View& view) {
    double area = 0;
    for (const spacing::Facing& pair : view.across())
        area += area_of_hole(pair, view.task().gap);
    return falling(area / view.area(), kSpoilt);
}

std::string says(const View& view, units::LengthUnit unit) {
    if (view.across().empty())
        return "No hole between pieces that look at each other.";
    const auto [least, most] = std::ranges::minmax(
        view.across(), {}, [](const spacing::Facing& pair) { return pair.size; });
    return fmt::format("{} of {} between pieces that look at each other.",
                       count_words(view.across().size(), "hole", "holes"),
                       range_words(least.size, most.size, unit));
}

}  // namespace

const Measure kHoles{
    "holes",
    "No holes",
    "1 less the bare area between pieces that look at each other from farther apart than "
    "neighbours, beyond the gap, over 15 % of the area of the pieces",
    "common practice, no source",
    5,
    value,
    says,
};

}  // namespace wallwright::arrange
