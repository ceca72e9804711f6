// Lighter and darker tones of a colour, and how light one is.
#pragma once

#include "draw/drawing.h"

namespace wallwright::draw {

/// Part way from `from` to `to`: 0 gives the one, 1 the other.
wall::Colour mixed(wall::Colour from, wall::Colour to, double share);
/// Part way to white or to black.
wall::Colour lighter(wall::Colour colour, double share);
wall::Colour darker(wall::Colour colour, double share);

/// From 0 for black to 1 for white: relative luminance by WCAG 2.1.
double luminance(wall::Colour colour);
/// (lighter + 0.05) / (darker + 0.05) of the luminances, by WCAG 2.1; at least 1.
double contrast(wall::Colour one, wall::Colour other);

/// The colour as a thin wash: light enough that the inks for text keep their contrast of 4.5 on it,
/// whatever was chosen.
wall::Colour wash(wall::Colour colour);

/// A paint of its own colour.
Paint own(wall::Colour colour, double alpha = 1);

}  // namespace wallwright::draw
