// What must be at hand to put the planned pieces up.
#pragma once

#include "hanging/fixings.h"

namespace wallwright::hanging {

/// So many fixings of one type.
struct Need {
    wall::FixingTypeId type;
    std::string title;
    int count = 0;
    int from_stock = 0;  ///< How many of them the stock covers.
    int in_drawer = 0;   ///< How many of the type there are in all.
};

/// Whose fixings: of frames that can go up today, or of those that are wished for.
enum class Bought { yes, not_yet };

/// Of the planned pieces among the hangings, by title. What hangs already has its own.
std::vector<Need> needs(const wall::Project& project, const std::vector<Hanging>& hangings,
                        Bought bought = Bought::yes);

}  // namespace wallwright::hanging
