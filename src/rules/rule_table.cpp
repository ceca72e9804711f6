#include "rules/all.h"

#include <array>

namespace wallwright::rules {

std::span<const Rule> all_rules() {
    // Made on the first call: the rules are constants of other files.
    static const std::array kRules{
        kWeightWithinRating,
        kOverBed,
        kCableZones,
        kHeatAndSteam,
        kSurfaceFit,
        kHangerFits,
        kHangerMeasured,
        kFurnitureOnWall,
        kDatumInSight,
        kTapeReach,
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
