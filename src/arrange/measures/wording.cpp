#include "arrange/measures/wording.h"

#include "arrange/measures/slope.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::arrange {

std::string range_words(double low, double high, units::LengthUnit unit) {
    const std::string from = units::format_number(low, unit);
    const std::string to = units::format_length(high, unit);
    return units::format_length(low, unit) == to ? to : fmt::format("{} to {}", from, to);
}

std::string count_words(std::size_t count, std::string_view one, std::string_view many) {
    return fmt::format("{} {}", count, count == 1 ? one : many);
}

std::string side_words(double by, std::string_view less, std::string_view more,
                       units::LengthUnit unit) {
    if (std::abs(by) <= kExact)
        return {};
    return fmt::format("{} {}", units::format_length(std::abs(by), unit), by < 0 ? less : more);
}

}  // namespace wallwright::arrange
