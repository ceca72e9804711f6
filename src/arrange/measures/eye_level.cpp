#include "arrange/measures/above.h"
#include "arrange/measures/all.h"
#include "arrange/measures/slope.h"
#include "arrange/measures/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::arrange {

namespace {

constexpr double kEasy = 450;    ///< mm up or down from where the group's middle belongs.
constexpr double kBeyond = 700;  ///< mm more at which a piece is lost to the eye.

/// mm from where the group's middle belongs to that of the piece, each over the floor under it.
double off(const View& view, std::size_t i, double right) {
    return std::abs(view.from_floor(i).centre().y - right);
}

double value(const View& view) {
    const double right = right_middle(view);
    double sum = 0;
    for (std::size_t i = 0; i < view.size(); ++i)
        sum += falling(std::max(0.0, off(view, i, right) - kEasy), kBeyond);
    return sum / static_cast<double>(view.size());
}

std::string says(const View& view, units::LengthUnit unit) {
    const double right = right_middle(view);
    std::size_t far = 0;
    double most = 0;
    for (std::size_t i = 0; i < view.size(); ++i) {
        far += off(view, i, right) > kEasy ? 1U : 0U;
        most = std::max(most, off(view, i, right));
    }
    if (far == 0)
        return "Every piece is easy to look at.";
    return fmt::format("{} to look up or down at, by up to {}.",
                       far == 1 ? "1 piece is" : fmt::format("{} pieces are", far),
                       units::format_length(std::round(most), unit));
}

}  // namespace

const Measure kEyeLevel{
    "eye_level",
    "Eye level",
    "mean over the pieces: 1 where the middle is within 450 mm of where the group's middle "
    "belongs, over the floor under it, straight down to 0 at 700 mm more",
    "our choice, no source",
    3,
    value,
    says,
};

}  // namespace wallwright::arrange
