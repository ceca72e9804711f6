// How measures speak.
#pragma once

#include "units/length.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace wallwright::arrange {

/// "75 to 96 mm", or "75 mm" where both read alike.
std::string range_words(double low, double high, units::LengthUnit unit);
/// "1 gap", "12 gaps".
std::string count_words(std::size_t count, std::string_view one, std::string_view many);
/// What differs by `by` mm: "20 mm left of", "20 mm right of", or nothing within a tape's sight.
std::string side_words(double by, std::string_view less, std::string_view more,
                       units::LengthUnit unit);

}  // namespace wallwright::arrange
