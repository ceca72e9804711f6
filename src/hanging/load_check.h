// What is wrong with a piece on the fixings that it got.
#pragma once

#include "hanging/offer.h"

namespace wallwright::hanging {

/// Stops: what wall_check.h finds, a load beyond rating / margin, a pull off the wall beyond what
/// nails hold in wood, more weight than strips may hold however many, strips that do not fit on the
/// back, on a rough back, or behind a piece that cannot be replaced (not for heirlooms: packets;
/// common practice, no source). Notes: strips of which more than a quarter hangs over the rebate
/// (the bound is our choice), a hook whose plate shows above the frame. Worst first.
std::vector<wall::Finding> check_load(const Job& job, const Offer& offer);

}  // namespace wallwright::hanging
