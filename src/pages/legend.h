// One line that says what the signs on an elevation mean.
#pragma once

#include "pages/sheet.h"

namespace wallwright::pages {

inline constexpr double kLegendHeight = 4;  ///< mm

/// What there is to explain beside the signs of every elevation.
struct Explained {
    bool wished = false;  ///< Frames that are not bought yet.
    bool studs = false;
};

/// From `at`, the left end of its base line, over at most `width` mm; signs that would not fit are
/// left out.
void add_legend(Shapes& shapes, Spot at, double width, const Explained& explained);

}  // namespace wallwright::pages
