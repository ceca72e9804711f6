// Sheets of paper and what fits on them.
#pragma once

#include "geometry/rect.h"

#include <optional>
#include <string_view>

namespace wallwright::pages {

/// A4 by ISO 216; Letter by ANSI/ASME Y14.1; A3 by ISO 216.
enum class Paper { a4, letter, a3 };

geometry::Size size_of(Paper paper);                      ///< mm, upright.
std::optional<Paper> paper_named(std::string_view name);  ///< "a4", "letter", "a3", either case.

inline constexpr double kMargin =
    12;  ///< mm; home printers leave 3 to 6 mm white, and pages get punched.

}  // namespace wallwright::pages
