#include "arrange/measures/above.h"

#include <algorithm>

namespace wallwright::arrange {

namespace {

constexpr double kShare = 0.5;  ///< Of the narrower width: less than that is beside and not above.

}  // namespace

std::optional<double> clearance_above(const View& view) {
    if (view.beneath() == nullptr)
        return std::nullopt;
    const WallRect& furniture = view.beneath()->place;
    const double narrower = std::min(view.bounds().width(), furniture.width());
    if (geometry::overlap_x(view.bounds(), furniture) < kShare * narrower)
        return std::nullopt;
    std::optional<double> least;
    for (const Spot& spot : view.spots()) {
        if (geometry::overlap_x(spot.place, furniture) <= geometry::kLengthEps)
            continue;
        const double clear = spot.place.bottom() - furniture.top();
        least = least ? std::min(*least, clear) : clear;
    }
    return least && *least >= -geometry::kLengthEps ? least : std::nullopt;
}

bool above_furniture(const Task& task) {
    return task.beneath.has_value();
}

double right_middle(const View& view) {
    const double wanted = view.task().centre_height;
    const std::optional<double> clear = clearance_above(view);
    if (!clear)
        return wanted;
    const Beneath& beneath = *view.beneath();
    const double middle = view.bounds_from_floor().centre().y;
    const double lowest = middle + beneath.clearance_least - *clear;
    const double highest = middle + beneath.clearance_most - *clear;
    return std::max(lowest, std::min(wanted, highest));
}

}  // namespace wallwright::arrange
