// What one type of fixing would do for one piece.
#pragma once

#include "hanging/capacity.h"
#include "hanging/fixings.h"
#include "hanging/job.h"

namespace wallwright::hanging {

struct Offer {
    const wall::FixingType* type = nullptr;  ///< Into the catalogue.
    std::vector<Fixing> fixings;  ///< Placed and loaded; fewer than wanted when no more fit.
    int wanted = 0;               ///< How many the weight and its margin ask for.
    bool lies_flat = true;        ///< No strip is wider than the moulding.
    Unfit unfit = Unfit::no;      ///< Why it cannot go into this wall at all.
    double margin = 1;
    std::optional<Newtons> top_pull;  ///< On all of them together; none under a rail.
};

/// True when a fixing rated so may take the load with its margin; rounding is forgiven.
bool within_rating(Kilograms rated, Kilograms load, double margin);

/// True when the nails are pulled off the wall no harder than they hold; rounding is forgiven.
bool nails_hold(const Fixing& fixing);

/// True when every fixing is there, suits the wall, lies flat, has its load within its rating and
/// is not pulled off the wall beyond what nails hold or pull.h allows.
bool carries(const Offer& offer);

/// True when the plate of a nailed hook is higher than the frame above its bearing point.
bool shows_above(const Job& job, const Offer& offer);

/// Whether a hanger takes this kind of fixing at all: strips go with strips, keyholes over the
/// heads of screws, rings and a cord over one hook under a rail, and all but strips and keyholes
/// on hooks and screws.
bool goes_with(wall::HangerType hanger, wall::FixingKind kind);

/// And whether it takes this one: neither teeth nor keyholes go on a closed hook.
bool goes_with(wall::HangerType hanger, const wall::FixingType& type);

/// The offer of a type that goes with the job's hanger, whose measures must be free of stops.
/// Strips: as many pairs as the weight asks for, up to kMostPairs. All others: one at each bearing
/// point, or on the rail straight above it.
Offer offer_of(const Job& job, const wall::FixingType& type);

}  // namespace wallwright::hanging
