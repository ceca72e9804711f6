// A stud beside the place where a piece hangs, when it would be better hung from it.
#pragma once

#include "hanging/offer.h"

#include <optional>

namespace wallwright::hanging {

/// A note of how far to move a planned piece so that its fixings fall on studs: where its offer
/// does not carry it or, in a region of earthquakes, leaves it on an open hook, and a fixing in the
/// studs would carry it, closed. Nothing else.
std::optional<wall::Finding> stud_near(const Job& job, const wall::Catalogue& catalogue,
                                       const Offer& offer);

}  // namespace wallwright::hanging
