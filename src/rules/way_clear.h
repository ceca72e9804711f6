// The shortest straight way out of trouble, for findings that say how far to move what.
#pragma once

#include "geometry/polygon.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace wallwright::rules {

struct Way {
    double distance = 0;         ///< mm
    std::string_view direction;  ///< "up", "down", "to the left", "to the right"
};

/// The same as a step on the wall.
geometry::Vec<geometry::Wall> step_of(const Way& way);

/// How far one of two rectangles must go to part them, the shortest of the four ways in mm; 0 when
/// they do not overlap by more than a hair.
double overlap_depth(const geometry::Rect<geometry::Wall>& a,
                     const geometry::Rect<geometry::Wall>& b);

/// How far `moving` must go up, down or aside to stand `margin` clear of `from`: the shortest of
/// the ways that end inside the outline, or of all four when none does.
Way way_clear(const geometry::Polygon& outline, const geometry::Rect<geometry::Wall>& moving,
              const geometry::Rect<geometry::Wall>& from, double margin);

/// How far a rectangle that reaches outside must go up, down or aside to be inside, to 0.1 mm and
/// never less; nothing when no such way leads inside.
std::optional<Way> way_inside(const geometry::Polygon& outline,
                              const geometry::Rect<geometry::Wall>& place);

/// A piece and the points on it that must not be in certain places.
struct Carried {
    geometry::Rect<geometry::Wall> place;
    std::vector<geometry::Point<geometry::Wall>> points;
};

/// How far it must go up, down or aside, in whole mm, until none of its points is in any of `zones`
/// and all of it is inside; nothing when no such way leads there.
std::optional<Way> way_out(const geometry::Polygon& outline, const Carried& carried,
                           std::span<const geometry::Rect<geometry::Wall>> zones);

}  // namespace wallwright::rules
