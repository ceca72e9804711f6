// What a cord leaves open of how high its piece will hang.
#pragma once

#include "hanging/marks.h"

namespace wallwright::hanging {

/// +- mm upright, beside tape and level: of a piece on its own cord by how much the cord's drop
/// changes where its length is 2 mm off (our choice: measured along the tied cord), the larger of
/// longer and shorter; of one on a rail 3 mm for knots and stretch (our choice). 0 without a cord.
double cord_error(const wall::Project& project, const Mark& mark);

}  // namespace wallwright::hanging
