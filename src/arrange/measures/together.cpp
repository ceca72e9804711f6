#include "arrange/measures/all.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::arrange {

namespace {

double value(const View& view) {
    return 1 / static_cast<double>(std::max<std::size_t>(1, view.groups()));
}

std::string says(const View& view, units::LengthUnit unit) {
    if (view.groups() <= 1)
        return "All pieces are of one group.";
    return fmt::format("The pieces are {} groups, more than {} apart.", view.groups(),
                       units::format_length(view.task().reach, unit));
}

}  // namespace

const Measure kTogether{
    "together",
    "One group",
    "1 over the number of groups",
    "more groups please less: Bauerly, Liu, Computational modeling and experimental investigation "
    "of effects of compositional elements on interface and design aesthetics, International "
    "Journal of Human-Computer Studies 64 (2006), from its abstract",
    3,
    value,
    says,
};

}  // namespace wallwright::arrange
