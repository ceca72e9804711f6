// Whether the fixing that a piece got can go into this wall at all.
#pragma once

#include "hanging/offer.h"

#include <vector>

namespace wallwright::hanging {

/// Adds a stop for what does not suit the wall (Unfit), and a note for what is made for some walls
/// only while nobody has said what this one is.
void check_wall(const Job& job, const Offer& offer, std::vector<wall::Finding>& findings);

}  // namespace wallwright::hanging
