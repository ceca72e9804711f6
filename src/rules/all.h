// Every rule by name. Each is defined in the file of its name; what hanging/ finds is in
// hanging_findings.cpp.
#pragma once

#include "rules/rule.h"

namespace wallwright::rules {

extern const Rule kOverBed;
extern const Rule kOverSeat;
extern const Rule kCableZones;
extern const Rule kPipes;
extern const Rule kNoHoles;
extern const Rule kOldCoatings;
extern const Rule kEarthquake;
extern const Rule kHeatAndSteam;
extern const Rule kSurfaceFit;
extern const Rule kInSun;
extern const Rule kIrreplaceable;
extern const Rule kWallKnown;
extern const Rule kWeightWithinRating;
extern const Rule kFixingSuitsWall;
extern const Rule kIrreplaceableOnStrips;
extern const Rule kHangerFits;
extern const Rule kRailClear;
extern const Rule kHangerStrength;
extern const Rule kHangerMeasured;
extern const Rule kFurnitureOnWall;
extern const Rule kDatumInSight;
extern const Rule kTapeReach;
extern const Rule kGapSpread;
extern const Rule kStripsFitTheBack;
extern const Rule kHeavy;
extern const Rule kGlassLarge;
extern const Rule kInsideWall;
extern const Rule kClearOfFurnitureAndFixtures;
extern const Rule kNoOverlap;
extern const Rule kPrintFitsFrame;
extern const Rule kMountServes;
extern const Rule kPrintSharp;
extern const Rule kDepthFitsRebate;
extern const Rule kFixingsInStock;
extern const Rule kGapsEven;
extern const Rule kGapsInRange;
extern const Rule kCentreLine;
extern const Rule kClearanceAboveFurniture;
extern const Rule kWidthToFurniture;

}  // namespace wallwright::rules
