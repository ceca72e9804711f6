// Lengths as people type and read them. Inside the program every length is a double in millimetres.
#pragma once

#include "base/problem.h"

#include <string>
#include <string_view>

namespace wallwright::units {

enum class LengthUnit { mm, cm, inch };
inline constexpr LengthUnit kLengthUnits[] = {LengthUnit::mm, LengthUnit::cm, LengthUnit::inch};

inline constexpr double kMmPerInch = 25.4;  ///< Exact by definition (international inch, 1959).

/// Reads a length: "42", "42 cm", "31,5 cm", "16 1/2 in", "16.5\"", "1' 4\"", "420mm", "1.2 m", "-3
/// mm". A bare number is in `bare`. Gives millimetres, finite and within 1 km; negative values are
/// allowed.
Result<double> parse_length(std::string_view text, LengthUnit bare);

/// As parse_length, but the length must be more than zero, as a size is.
Result<double> parse_size(std::string_view text, LengthUnit bare);

/// Two lengths with x, X or a multiplication sign between: "300x400", "30 x 40 cm", "12 1/2 x 16
/// in". A unit on the second counts for the first when that has none. Both must be more than zero.
struct SizeText {
    double width_mm = 0;
    double height_mm = 0;
};
Result<SizeText> parse_size_pair(std::string_view text, LengthUnit bare);

/// The length in the person's unit, without its name: "1234.5" (mm to 0.1), "123.5" (cm to 0.1 mm,
/// so two decimals at most), "16 1/2" (inches to the nearest 1/16, fraction reduced). Trailing
/// zeros are dropped.
std::string format_number(double mm, LengthUnit unit);

/// format_number with the unit's name: "420 mm", "42 cm", "16 1/2 in".
std::string format_length(double mm, LengthUnit unit);

/// A tolerance in the person's unit, never shown smaller than it is: up to the next 0.1 mm or 1/16
/// in.
std::string format_tolerance(double mm, LengthUnit unit);

/// What format_length would show, in millimetres: the length rounded to the step of the unit.
double rounded(double mm, LengthUnit unit);

std::string_view name_of(LengthUnit unit);  ///< "mm", "cm", "in"
Result<LengthUnit> parse_unit(std::string_view name);

}  // namespace wallwright::units
