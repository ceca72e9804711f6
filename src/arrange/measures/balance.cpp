#include "arrange/measures/all.h"
#include "arrange/measures/ngo.h"

#include <fmt/format.h>

namespace wallwright::arrange {

namespace {

double value(const View& view) {
    return balance(moments_of(view.spots(), view.bounds()));
}

double share(double one, double other) {
    return one + other > 0 ? 100 * one / (one + other) : 50;
}

std::string says(const View& view, units::LengthUnit /*unit*/) {
    const Moments moments = moments_of(view.spots(), view.bounds());
    const double left = share(moments.left, moments.right);
    const double top = share(moments.top, moments.bottom);
    return fmt::format(
        "To the eye {:.0f} % weighs left and {:.0f} % right, {:.0f} % above and "
        "{:.0f} % below.",
        left, 100 - left, top, 100 - top);
}

}  // namespace

const Measure kBalance{
    "balance",
    "Balance",
    "BM = 1 - (|left - right| / larger + |top - bottom| / larger) / 2 of area times distance from "
    "the axes of the group's bounds",
    "Ngo, Teo, Byrne, Modelling interface aesthetics, Information Sciences 152 (2003)",
    2,
    value,
    says,
};

}  // namespace wallwright::arrange
