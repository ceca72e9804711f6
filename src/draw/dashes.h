// What the line types look like, for every painter.
#pragma once

#include "draw/drawing.h"

#include <span>

namespace wallwright::draw {

/// Lengths of dash, gap, dash, gap ... in line widths, by ISO 128-2; empty for a continuous line.
std::span<const double> dashes_of(LineType type);

/// The width of a hatch's lines, mm on paper.
inline constexpr double kHatchWidth = 0.18;

/// What a plate leaves free around the letters on it, mm on paper.
inline constexpr double kPlateAir = 0.35;

}  // namespace wallwright::draw
