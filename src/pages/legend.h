// One line that says what the signs on an elevation mean.
#pragma once

#include "pages/sheet.h"

namespace wallwright::pages {

inline constexpr double kLegendHeight = 4;  ///< mm

/// From `at`, the left end of its base line, over at most `width` mm; signs that would not fit are
/// left out. `wished`: whether frames that are not bought yet are among what it explains.
void add_legend(Shapes& shapes, Spot at, double width, bool wished);

}  // namespace wallwright::pages
