#include "arrange/measures/all.h"
#include "arrange/measures/ngo.h"
#include "arrange/measures/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::arrange {

namespace {

double value(const View& view) {
    // Pieces that overlap, which the rules speak of, cannot move their mass out of the bounds
    // either; only rounding can.
    return std::clamp(equilibrium(view.mass(), view.bounds()), 0.0, 1.0);
}

std::string says(const View& view, units::LengthUnit unit) {
    const WallVec off = view.mass() - view.bounds().centre();
    const std::string across = side_words(off.x, "left of", "right of", unit);
    const std::string up = side_words(off.y, "below", "above", unit);
    if (across.empty() && up.empty())
        return "The centre of all areas is in the group's middle.";
    return fmt::format("The centre of all areas is {}{}{} the group's middle.", across,
                       across.empty() || up.empty() ? "" : " and ", up);
}

}  // namespace

const Measure kEquilibrium{
    "equilibrium",
    "Equilibrium",
    "1 - (|x| / half the width + |y| / half the height) / 2, x and y the way from the middle of "
    "the bounds to the centre of all areas",
    "Ngo, Teo, Byrne, Modelling interface aesthetics, Information Sciences 152 (2003), without its "
    "division by the number of pieces, with which it hardly moves",
    1,
    value,
    says,
};

}  // namespace wallwright::arrange
