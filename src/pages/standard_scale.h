// Drawings to the scales that a scale rule has.
#pragma once

#include "pages/sheet.h"

#include <functional>

namespace wallwright::pages {

/// A drawing made for one scale: 20 stands for 1:20.
struct Scaled {
    double denominator = 1;
    draw::WallDrawing drawing;

    [[nodiscard]] double scale() const { return 1 / denominator; }
    [[nodiscard]] geometry::Size size_on_page() const;
    [[nodiscard]] bool fits(const Area& area) const;
};

/// Made at the largest scale that fits the area: the reductions of ISO 5455, Technical drawings,
/// Scales, table 1, down to 1:10 000. `least` is the first denominator to try.
Scaled at_standard_scale(const std::function<draw::WallDrawing(double denominator)>& make,
                         const Area& area, double least = 1);

/// The drawing with its extent's upper left corner at the spot.
geometry::Transform<geometry::Wall, geometry::Page> put_at(const Scaled& scaled, Spot upper_left);
/// In the middle of the area.
geometry::Transform<geometry::Wall, geometry::Page> centred(const Scaled& scaled, const Area& area);

}  // namespace wallwright::pages
