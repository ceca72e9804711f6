#include "rules/all.h"

#include <array>

namespace wallwright::rules {

std::span<const Rule> all_rules() {
    // Made on the first call: the rules are constants of other files.
    static const std::array kRules{
        kWeightWithinRating,
        kFixingSuitsWall,
        kIrreplaceableOnStrips,
        kOverBed,
        kCableZones,
        kPipes,
        kNoHoles,
        kOldCoatings,
        kEarthquake,
        kHeatAndSteam,
        kSurfaceFit,
        kInSun,
        kIrreplaceable,
        kWallKnown,
        kHangerFits,
        kRailClear,
        kHangerStrength,
        kHangerMeasured,
        kFurnitureOnWall,
        kDatumInSight,
        kTapeReach,
        kGapSpread,
        kStripsFitTheBack,
        kInsideWall,
        kClearOfFurnitureAndFixtures,
        kNoOverlap,
        kPrintFitsFrame,
        kMountServes,
        kHeavy,
        kGlassLarge,
        kOverSeat,
        kDepthFitsRebate,
        kPrintSharp,
        kFixingsInStock,
        kGapsEven,
        kGapsInRange,
        kCentreLine,
        kClearanceAboveFurniture,
        kWidthToFurniture,
    };
    return kRules;
}

}  // namespace wallwright::rules
