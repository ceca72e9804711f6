// What a tape measure leaves open.
#pragma once

#include "wall/project.h"

#include <span>

namespace wallwright::hanging {

/// Maximum permissible error in mm over `length_mm` (its sign does not matter): a + b L (+ c from
/// the hook or butt end), L in metres rounded up. Measuring Instruments Directive 2014/32/EU, Annex
/// X (MI-008), Table 1.
double tape_error(wall::TapeClass tape, double length_mm, bool from_hook);

/// Of one pencil mark in one direction, +- mm: tape error from its hook or butt end, since marks
/// are measured from a corner or a line, and the width of a pencil stroke (0.5 mm, our choice),
/// added in quadrature as independent errors (J. R. Taylor, An Introduction to Error Analysis).
double mark_error(wall::TapeClass tape, double length_mm);

/// mm by which a line drawn with the style's level may be off at `run_mm` from where it began.
double level_error(const wall::HangingStyle& style, double run_mm);

/// What is left open at the end of a chain, +- mm.
struct ChainError {
    double likely = 0;  ///< Root of the sum of squares, for independent errors.
    double worst = 0;   ///< Plain sum.
};
/// Of links that each err so much (F. Scholz, Tolerance Stack Analysis Methods, Boeing 1995).
ChainError chain_error(std::span<const double> links);

}  // namespace wallwright::hanging
