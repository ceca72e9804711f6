#include "arrange/measures/all.h"
#include "arrange/measures/slope.h"
#include "arrange/measures/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace wallwright::arrange {

namespace {

/// The stretch of wall about the group, at its height, that nothing stands or hangs in.
geometry::Span free_stretch(const View& view) {
    const WallRect& bounds = view.bounds();
    const double middle = bounds.centre().x;
    geometry::Span stretch{view.task().wall.left(), view.task().wall.right()};
    for (const WallRect& one : view.task().keep_out) {
        if (geometry::overlap_y(one, bounds) <= geometry::kLengthEps)
            continue;
        if (one.right() <= middle)
            stretch.low = std::max(stretch.low, one.right());
        else if (one.left() >= middle)
            stretch.high = std::min(stretch.high, one.left());
    }
    return stretch;
}

/// What the group is to hang in the middle of: above furniture, in the wall, or, where other groups
/// hang on it, in its own part of the wall.
geometry::Span carrier(const View& view) {
    if (view.beneath() != nullptr)
        return {view.beneath()->place.left(), view.beneath()->place.right()};
    if (view.any_fixed())
        return free_stretch(view);
    return {view.task().wall.left(), view.task().wall.right()};
}

double off_centre(const View& view) {
    const geometry::Span span = carrier(view);
    return view.bounds().centre().x - (span.low + span.high) / 2;
}

double value(const View& view) {
    const geometry::Span span = carrier(view);
    return falling(seen_off(std::abs(off_centre(view))), (span.high - span.low) / 2);
}

std::string says(const View& view, units::LengthUnit unit) {
    const std::string whose = view.beneath() != nullptr ? view.beneath()->title
                              : view.any_fixed()        ? "the free wall about it"
                                                        : "the wall";
    const std::string side = side_words(off_centre(view), "left of", "right of", unit);
    return side.empty() ? fmt::format("The group's middle is in line with that of {}.", whose)
                        : fmt::format("The group's middle is {} the middle of {}.", side, whose);
}

}  // namespace

const Measure kCentred{
    "centred",
    "Centred",
    "1 where the middle of the group is over the middle of the furniture, or else of the wall or, "
    "beside what hangs already, of the free wall about it, within 1 mm; straight down to 0 at half "
    "its width",
    "a group is centred on what it hangs above; common practice, no source",
    2,
    value,
    says,
};

}  // namespace wallwright::arrange
