// The statics of one piece in words: formulas with the numbers put in, and what they leave out.
#pragma once

#include "hanging/forces.h"

namespace wallwright::hanging {

/// A piece on its fixings, of which there is at least one. Holds on to project and hanging.
struct Hung {
    const wall::Project& project;
    const Hanging& hanging;
    geometry::Rect<geometry::Wall> place;
    double depth = 0;     ///< mm
    wall::Hanger hanger;  ///< With all its measures.
};

/// In the order in which one would work them out; numbers in the person's units.
std::vector<Worked> formulas_of(const Hung& hung);

/// What is left out, and what a pair at the foot, bumpers or a rail change.
std::vector<std::string> remarks_on(const Hung& hung);

}  // namespace wallwright::hanging
