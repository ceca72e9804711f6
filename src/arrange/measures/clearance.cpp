#include "arrange/measures/above.h"
#include "arrange/measures/all.h"
#include "arrange/measures/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::arrange {

namespace {

constexpr double kLeastScale = 100;  ///< mm; for a style that allows hardly any clearance.

double value(const View& view) {
    const std::optional<double> clear = clearance_above(view);
    if (!clear)
        return 1;
    const Beneath& beneath = *view.beneath();
    if (*clear < beneath.clearance_least - geometry::kLengthEps)
        return std::max(0.0, *clear) / beneath.clearance_least;
    const double over = std::max(0.0, *clear - beneath.clearance_most);
    return 1 / (1 + over / std::max(beneath.clearance_most, kLeastScale));
}

std::string says(const View& view, units::LengthUnit unit) {
    if (view.beneath() == nullptr)
        return "There is no furniture to hang above.";
    const Beneath& beneath = *view.beneath();
    const std::optional<double> clear = clearance_above(view);
    if (!clear)
        return fmt::format("The group does not hang above {}.", beneath.title);
    return fmt::format("The lowest edge over {} is {} above it; {} is usual.", beneath.title,
                       units::format_length(*clear, unit),
                       range_words(beneath.clearance_least, beneath.clearance_most, unit));
}

}  // namespace

const Measure kClearance{
    "clearance",
    "Clearance",
    "1 between the least and the most clearance above the furniture; below, its share of the "
    "least; above, 1/2 at twice the most; 1 where the group is not above any",
    "6 to 10 in (152 to 254 mm) from the highest point of the back; common practice, no source",
    2,
    value,
    says,
    above_furniture,
};

}  // namespace wallwright::arrange
