#include "arrange/measures/ngo.h"

#include <algorithm>
#include <cmath>

namespace wallwright::arrange {

namespace {

/// The integral of distance to `axis` over what lies from `from` to `to`, all on one side of it.
double moment(double from, double to, double axis) {
    return to <= from ? 0 : (to - from) * std::abs((from + to) / 2 - axis);
}

double imbalance(double a, double b) {
    const double more = std::max(a, b);
    return more > 0 ? std::abs(a - b) / more : 0;
}

}  // namespace

Moments moments_of(std::span<const Spot> spots, const WallRect& frame) {
    const WallPoint axes = frame.centre();
    Moments sum;
    for (const Spot& spot : spots) {
        const WallRect& place = spot.place;
        const double width = place.width();
        const double height = place.height();
        sum.left += height * moment(place.left(), std::min(place.right(), axes.x), axes.x);
        sum.right += height * moment(std::max(place.left(), axes.x), place.right(), axes.x);
        sum.bottom += width * moment(place.bottom(), std::min(place.top(), axes.y), axes.y);
        sum.top += width * moment(std::max(place.bottom(), axes.y), place.top(), axes.y);
    }
    return sum;
}

double balance(const Moments& moments) {
    return 1 -
           (imbalance(moments.left, moments.right) + imbalance(moments.bottom, moments.top)) / 2;
}

double equilibrium(WallPoint mass, const WallRect& frame) {
    const double off_x = std::abs(mass.x - frame.centre().x) / (frame.width() / 2);
    const double off_y = std::abs(mass.y - frame.centre().y) / (frame.height() / 2);
    return 1 - (off_x + off_y) / 2;
}

}  // namespace wallwright::arrange
