#include "arrange/measures/all.h"
#include "arrange/measures/slope.h"
#include "arrange/measures/wording.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::arrange {

namespace {

/// What the group is to hang in the middle of.
const WallRect& carrier(const View& view) {
    return view.beneath() != nullptr ? view.beneath()->place : view.task().wall;
}

double off_centre(const View& view) {
    return view.bounds().centre().x - carrier(view).centre().x;
}

double value(const View& view) {
    return falling(seen_off(std::abs(off_centre(view))), carrier(view).width() / 2);
}

std::string says(const View& view, units::LengthUnit unit) {
    const std::string whose = view.beneath() != nullptr ? view.beneath()->title : "the wall";
    const std::string side = side_words(off_centre(view), "left of", "right of", unit);
    return side.empty() ? fmt::format("The group's middle is in line with that of {}.", whose)
                        : fmt::format("The group's middle is {} the middle of {}.", side, whose);
}

}  // namespace

const Measure kCentred{
    "centred",
    "Centred",
    "1 where the middle of the group is over the middle of the furniture, or else of the wall, "
    "within 1 mm; straight down to 0 at half its width",
    "a group is centred on what it hangs above; common practice, no source",
    2,
    value,
    says,
};

}  // namespace wallwright::arrange
