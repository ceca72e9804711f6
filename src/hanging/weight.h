// What a piece weighs: from its materials, or from a scale.
#pragma once

#include "wall/project.h"

#include <string>
#include <vector>

namespace wallwright::hanging {

using units::Kilograms;
using units::Newtons;

struct PartMass {
    std::string
        part;  ///< "moulding", "glazing", "backing", "mount", "mount layer", "print", "hanger".
    Kilograms low;
    Kilograms high;
};

struct PieceMass {
    Kilograms low;
    Kilograms high;  ///< What every check uses.
    bool weighed = false;
    std::vector<PartMass> parts;  ///< Also when weighed, to show beside it.
};

/// Areas x thicknesses x densities of what the project names; a part without a thickness or without
/// a size is left out. The range comes from the densities' own ranges and from the clearance in the
/// rebate (1 to 3 mm: Fine Art Trade Guild framing standards); printing paper is within 5 % of its
/// grammage, and what is screwed or stuck to the back counts for up to 50 g (our choice). A mount
/// without a print counts as uncut on the high side. A weighed value replaces both ends, +- 2 % or
/// 10 g for a kitchen scale (our choice). A material that is not in the catalogue counts as
/// aluminium (2700 kg/m3), the heaviest that frames are made of, on the high side and as nothing on
/// the low side.
PieceMass weigh(const wall::Project& project, const wall::Catalogue& catalogue,
                const wall::Piece& piece);

}  // namespace wallwright::hanging
