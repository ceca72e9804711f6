// What one type of fixing would do for one piece.
#pragma once

#include "hanging/fixings.h"
#include "hanging/job.h"

namespace wallwright::hanging {

struct Offer {
    const wall::FixingType* type = nullptr;  ///< Into the catalogue.
    std::vector<Fixing> fixings;  ///< Placed and loaded; fewer than wanted when no more fit.
    int wanted = 0;               ///< How many the weight and its margin ask for.
    bool lies_flat = true;        ///< No strip is wider than the moulding.
    double margin = 1;
    std::optional<Newtons> top_pull;  ///< Strips only.
};

/// True when a fixing rated so may take the load with its margin; rounding is forgiven.
bool within_rating(Kilograms rated, Kilograms load, double margin);

/// True when every fixing is there, lies flat and has its load within its rating.
bool carries(const Offer& offer);

/// True when the plate of a nailed hook is higher than the frame above its bearing point.
bool shows_above(const Job& job, const Offer& offer);

/// Whether a hanger takes this kind of fixing at all.
bool goes_with(wall::HangerType hanger, wall::FixingKind kind);

/// The offer of a type that goes with the job's hanger, whose measures must be free of stops.
/// Strips: as many pairs as the weight asks for, up to kMostPairs. Hooks and screws: one at each
/// bearing point.
Offer offer_of(const Job& job, const wall::FixingType& type);

}  // namespace wallwright::hanging
