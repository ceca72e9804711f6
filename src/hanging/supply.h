// How fixings are sold, and what of them is at hand, as the plan of a whole wall counts them.
#pragma once

#include "hanging/choice.h"
#include "hanging/fixing_plan.h"

namespace wallwright::hanging {

struct Sold {
    int pack = 1;
    double price = 0;  ///< 0 where it is not known.
};

/// As the person's shop sells it, or else the catalogue.
Sold sold_as(const wall::Project& project, const wall::FixingType& type);

/// One for each fixing of the catalogue, in its order. A pack without a known price counts as much
/// as the dearest known one, or 1 where none is known; in thousandths of the person's money.
std::vector<Supply> supplies_of(const wall::Project& project, const wall::Catalogue& catalogue,
                                const Drawer& drawer);

/// The ways of a piece, one for each offer; their types are the catalogue's.
std::vector<Way> ways_of(const Job& job, const std::vector<Offer>& offers,
                         const wall::Catalogue& catalogue);

}  // namespace wallwright::hanging
