// The floor as one walks on it: over a stair the line through its nosings.
#pragma once

#include "geometry/polygon.h"

#include <span>
#include <vector>

namespace wallwright::geometry {

/// Heights above a stair are taken from the line through the nosings, which the trade calls its
/// pitch line: pictures that climb with it hang at one height for the eye. Elsewhere the line is
/// the floor itself, and a step alone stays a step.
class FloorLine {
  public:
    /// Level, at 0.
    FloorLine() = default;
    explicit FloorLine(const Polygon& outline);

    /// mm; beyond the wall's ends as at its ends, and of the two heights at a step the right one.
    [[nodiscard]] double at(double x) const;
    [[nodiscard]] bool is_level() const;
    /// Rise per mm of its longest slope, negative where that goes down to the right; 0 when level.
    [[nodiscard]] double pitch() const;
    /// From left to right; none for the default.
    [[nodiscard]] std::span<const Point<Wall>> corners() const { return corners_; }

  private:
    std::vector<Point<Wall>> corners_;
};

/// The rectangle as far above a level floor as it is above this line under its middle.
Rect<Wall> above(const FloorLine& floor, const Rect<Wall>& place);

/// How far the middle of pieces that hang together is above the floor, in mm: of what bounds them,
/// each seen from the floor under it. At least one.
double middle_above(const FloorLine& floor, std::span<const Rect<Wall>> places);

}  // namespace wallwright::geometry
