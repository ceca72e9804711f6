// Every measure by name. Each is defined in the file of its name.
#pragma once

#include "arrange/measure.h"

namespace wallwright::arrange {

extern const Measure kEvenGaps;
extern const Measure kHoles;
extern const Measure kAlignment;
extern const Measure kCentreHeight;
extern const Measure kEyeLevel;
extern const Measure kClearance;
extern const Measure kWidthToFurniture;
extern const Measure kCentred;
extern const Measure kTogether;
extern const Measure kWishes;
extern const Measure kCompactness;
extern const Measure kRaggedEdge;
extern const Measure kBalance;
extern const Measure kEquilibrium;
extern const Measure kUnlikeNeighbours;
extern const Measure kColours;

}  // namespace wallwright::arrange
