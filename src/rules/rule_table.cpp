#include "rules/all.h"

#include <vector>

namespace wallwright::rules {

namespace {

/// What can hurt someone, or lead the hand with the pencil astray.
std::vector<Rule> of_safety() {
    return {kWeightWithinRating,
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
            kStripsFitTheBack};
}

/// What fits, and what practice asks.
std::vector<Rule> of_practice() {
    return {kInsideWall,
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
            kWidthToFurniture};
}

std::vector<Rule> both() {
    std::vector<Rule> rules = of_safety();
    const std::vector<Rule> more = of_practice();
    rules.insert(rules.end(), more.begin(), more.end());
    return rules;
}

}  // namespace

std::span<const Rule> all_rules() {
    // Made on the first call: the rules are constants of other files.
    static const std::vector<Rule> kRules = both();
    return kRules;
}

}  // namespace wallwright::rules
