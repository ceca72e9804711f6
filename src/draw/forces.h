// The forces on a piece, from the front and from the side, with the formulas.
#pragma once

#include "draw/drawing.h"
#include "hanging/forces.h"
#include "units/length.h"

namespace wallwright::draw {

struct ForceOptions {
    double scale = 0.1;  ///< mm on paper for one mm of the piece; figures are kept apart for it.
    units::LengthUnit unit = units::LengthUnit::mm;
    bool formulas = true;  ///< Below the two views.
    double words = 57;     ///< mm on paper that the lines of words may run to, if not further.
};

/// The frame from the front, its lower left corner the origin, and beside it from the side with the
/// wall; arrows as long as their forces, each with its number. Colour is not the only sign: weight,
/// what carries it and what holds it to the wall have heads of their own.
WallDrawing force_drawing(const hanging::FreeBody& body, const ForceOptions& options);

/// A drawing of forces and the scale that it was made for.
struct ScaledForces {
    double scale = 0.1;
    WallDrawing drawing;
};

/// At the largest scale, up to 1:4, at which it is no wider than `width` mm on paper; words run to
/// that width. Where the figures alone are wider, at the one at which the frame is 10 mm wide. The
/// options' own scale does not count.
ScaledForces force_drawing_within(const hanging::FreeBody& body, const ForceOptions& options,
                                  double width);

}  // namespace wallwright::draw
