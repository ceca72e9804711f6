#include "arrange/measures/above.h"
#include "arrange/measures/all.h"
#include "arrange/measures/slope.h"
#include "arrange/measures/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::arrange {

namespace {

constexpr double kAtTolerance = 0.8;
constexpr double kNothingBeyond = 5;  ///< Tolerances past the first at which the value is 0.
constexpr double kRaised = 0.5;  ///< Counts so much of what the clearance raises a tall group by.

double value(const View& view) {
    const double tolerance = view.task().centre_tolerance;
    const double right = right_middle(view);
    const double raised = std::max(0.0, right - view.task().centre_height);
    const double off =
        seen_off(std::abs(view.bounds_from_floor().centre().y - right) + kRaised * raised);
    if (off <= tolerance)
        return 1 - (1 - kAtTolerance) * off / tolerance;
    return kAtTolerance * falling(off - tolerance, kNothingBeyond * tolerance);
}

std::string says(const View& view, units::LengthUnit unit) {
    const double middle = view.bounds_from_floor().centre().y;
    const double right = right_middle(view);
    const std::string wanted =
        std::abs(right - view.task().centre_height) <= kExact
            ? fmt::format("the wanted {}", units::format_length(right, unit))
            : fmt::format("the {} that the clearance leaves", units::format_length(right, unit));
    const std::string side = side_words(middle - right, "under", "over", unit);
    if (side.empty())
        return fmt::format("The group's middle is at {}.", wanted);
    return fmt::format("The group's middle is {} above the floor, {} {}.",
                       units::format_length(middle, unit), side, wanted);
}

}  // namespace

const Measure kCentreHeight{
    "centre_height",
    "Centre height",
    "1 where the middle of the group is at the centre height above the floor, on a stair above the "
    "line through its nosings, within 1 mm, or as much lower as the "
    "clearance above the furniture asks; where that asks for higher, half of it counts as off; 0.8 "
    "at the tolerance, 0 at six times that",
    "1450 to 1550 mm in homes, the group hung as one piece; common practice, no source",
    3,
    value,
    says,
};

}  // namespace wallwright::arrange
