// Which fixing a piece gets when the person has not said.
#pragma once

#include "hanging/drawer.h"
#include "hanging/offer.h"

namespace wallwright::hanging {

/// The best offer by the order that hang_all promises, or nothing when the catalogue has no fixing
/// for this hanger. What is in the drawer comes first, except for a piece that hangs already.
std::optional<Offer> choose(const Job& job, const wall::Catalogue& catalogue, const Drawer& drawer);

}  // namespace wallwright::hanging
