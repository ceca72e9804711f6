// Bars of 100 mm and 4 in on every sheet: who measures them knows whether the printer kept the
// scale.
#pragma once

#include "pages/sheet.h"

namespace wallwright::pages {

inline constexpr double kPrintCheckWidth = 4 * units::kMmPerInch;

/// Both bars with their words, `at` being the upper left corner; 14 mm high.
void add_print_check(Shapes& shapes, Spot at);

}  // namespace wallwright::pages
