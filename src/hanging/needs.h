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
    int pack = 1;      ///< How many are sold together, as the person's shop or the catalogue says,
    double price = 0;  ///< and what a pack costs; 0 where it is not known.
    int packs = 0;     ///< To buy.
    int spare = 0;     ///< Left over of them and of what is at hand, once all are up.
    int at_hand = 0;   ///< In the drawer; for later, what those before leave of it and their packs.
    bool after_others = false;  ///< Those before take of the same type.
};

/// Whose fixings are bought: those of what goes up next, or not yet, of what goes up later.
enum class Bought { yes, not_yet };

/// A piece that goes up later: its frame is not bought yet, or it is of a stage after the first
/// that is still open, of which some bought frame is still planned.
bool is_later(const wall::Project& project, const wall::Piece& piece);

/// Of the planned pieces among the hangings, by title. What hangs already has its own. What goes up
/// later takes what the others leave in the drawer and in the packs bought for them.
std::vector<Need> needs(const wall::Project& project, const std::vector<Hanging>& hangings,
                        Bought bought = Bought::yes);

/// Said where the search for the cheapest fixings was cut short before it was proved.
std::optional<std::string> search_remark(const std::vector<Hanging>& hangings);

}  // namespace wallwright::hanging
