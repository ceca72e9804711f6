// The floor as one walks on it: over a stair the line through its nosings.
#pragma once

#include "geometry/polygon.h"

#include <span>
#include <vector>

namespace wallwright::geometry {

/// Heights above a stair are taken from the line through the nosings, which the trade calls its
/// pitch line: pictures that climb with it hang at one height for the eye. A stair is a flight of
/// three risers or more, or a slope as steep as a stair or a ramp; what a tape sees as level is
/// level. An outline without one, whatever is cut out of it from below, has its floor at 0.
class FloorLine {
  public:
    /// Level, at 0.
    FloorLine() = default;
    explicit FloorLine(const Polygon& outline);

    /// mm; level before the first flight and after the last.
    [[nodiscard]] double at(double x) const;
    [[nodiscard]] bool is_level() const { return corners_.empty(); }
    /// Rise per mm of the flight that is longest, negative where that goes down to the right; 0
    /// when level.
    [[nodiscard]] double pitch() const { return pitch_; }
    /// From left to right; none when level.
    [[nodiscard]] std::span<const Point<Wall>> corners() const { return corners_; }

  private:
    void add_flight(std::span<const Point<Wall>> corners);

    std::vector<Point<Wall>> corners_;
    double pitch_ = 0;
    double longest_ = 0;  // mm that the longest flight takes across
};

/// The rectangle as far above a level floor as it is above this line under its middle.
Rect<Wall> above(const FloorLine& floor, const Rect<Wall>& place);

/// How far the middle of pieces that hang together is above the floor, in mm: of what bounds them,
/// each seen from the floor under it. At least one.
double middle_above(const FloorLine& floor, std::span<const Rect<Wall>> places);

}  // namespace wallwright::geometry
