// When a measure has passed a bound: one hair for all rules, and what was measured beside what was
// wanted.
#pragma once

#include "wall/finding.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace wallwright::rules {

/// mm; half of the 0.1 mm to which lengths are shown. Less than this past a bound is not past it,
/// so that no finding reads "75 mm, over 75 mm".
inline constexpr double kHair = 0.05;

/// True when a length in mm is more than the bound.
constexpr bool exceeds(double measured, double bound) {
    return measured > bound + kHair;
}

/// What was found and the bound it passed, both in `unit`.
struct Measure {
    double measured = 0;
    double wanted = 0;
    std::string_view unit = "mm";
};

/// A finding whose rule is filled in by assess(), which knows whom it asked.
wall::Finding finding(wall::Severity severity, std::vector<wall::PieceId> pieces,
                      const geometry::Rect<geometry::Wall>& place, std::optional<Measure> measure,
                      std::string text);

}  // namespace wallwright::rules
