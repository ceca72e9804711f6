#include "arrange/measures/above.h"
#include "arrange/measures/all.h"
#include "arrange/measures/slope.h"
#include "arrange/measures/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::arrange {

namespace {

constexpr double kTooNarrow = 0.4;  ///< Of the least share: there the value is 0.
constexpr double kTooWide = 1.75;   ///< Of the most share.

double value(const View& view) {
    if (!clearance_above(view))
        return 1;
    const Beneath& beneath = *view.beneath();
    const double whole = beneath.place.width();
    const double least = beneath.share_least * whole;
    const double most = beneath.share_most * whole;
    const double width = view.bounds().width();
    if (width < least)
        return falling(least - width, (1 - kTooNarrow) * least);
    return falling(std::max(0.0, width - most), (kTooWide - 1) * most);
}

std::string says(const View& view, units::LengthUnit unit) {
    if (view.beneath() == nullptr)
        return "There is no furniture to hang above.";
    const Beneath& beneath = *view.beneath();
    if (!clearance_above(view))
        return fmt::format("The group does not hang above {}.", beneath.title);
    const double whole = beneath.place.width();
    const double width = view.bounds().width();
    return fmt::format("The group is {} wide, {:.0f} % of {}; {} is usual.",
                       units::format_length(width, unit), 100 * width / whole, beneath.title,
                       range_words(beneath.share_least * whole, beneath.share_most * whole, unit));
}

}  // namespace

const Measure kWidthToFurniture{
    "width_to_furniture",
    "Width to furniture",
    "1 between the least and the most share of the furniture's width; straight down to 0 at 0.4 "
    "of the least and at 1.75 of the most; 1 where the group is not above any",
    "0.60 to 0.75 of the furniture; common practice, no source",
    2,
    value,
    says,
    above_furniture,
};

}  // namespace wallwright::arrange
