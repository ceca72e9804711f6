#include "arrange/measures/all.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::arrange {

namespace {

/// Half the gap around each piece belongs to it, so that gaps are no waste.
double value(const View& view) {
    const double gap = view.task().gap;
    double used = 0;
    for (const Spot& spot : view.spots())
        used += (spot.place.width() + gap) * (spot.place.height() + gap);
    const WallRect& bounds = view.bounds_from_floor();
    const double all = (bounds.width() + gap) * (bounds.height() + gap);
    return std::min(1.0, used / all);
}

std::string says(const View& view, units::LengthUnit unit) {
    return fmt::format("Within {} by {}, {:.0f} % is bare beyond the gaps.",
                       units::format_number(view.bounds_from_floor().width(), unit),
                       units::format_length(view.bounds_from_floor().height(), unit),
                       100 * (1 - value(view)));
}

}  // namespace

const Measure kCompactness{
    "compactness",
    "Compactness",
    "area of the pieces over that of their bounds, both grown by half the gap on every side; on a "
    "stair of the bounds of what climbs with it",
    "1 less the dead space of floorplanning, as for the hard-block sets of MCNC and GSRC",
    3,
    value,
    says,
};

}  // namespace wallwright::arrange
