// What a wall still asks for: what to buy, and which tools to have at hand.
#pragma once

#include "hanging/needs.h"
#include "mounts/card/card_plan.h"
#include "rules/assess.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::buying {

enum class Kind { fixings, cord, frames, card, tape, cutting, other };

/// One line of the list.
struct Item {
    Kind kind = Kind::fixings;
    std::string title;     ///< "Medium strip pair", "Cord that breaks at no less than 8 kg".
    std::string amount;    ///< "2 packs of 4", "3 m", "1 sheet": as one says it in the shop.
    std::string why = {};  ///< "6 needed, 1 in the drawer, 3 spare"; may be empty.
    std::optional<double> price =
        {};              ///< Of all of it, in the person's money; none where not known.
    bool later = false;  ///< For frames that are not bought yet or for a later stage.
};

struct List {
    std::vector<Item> items;                ///< Today's first, and within these by kind.
    double known_total = 0;                 ///< Of the items with a price.
    int without_price = 0;                  ///< Items that have none.
    std::vector<std::string> remarks = {};  ///< Sentences: which fixings a stop speaks against,
                                            ///< what having the mounts cut would cost.
};

/// Fixings in packs, cord for pieces and rails, frames wished for, card and the tape that mounts
/// are put together by where there is a card plan, mounts to be cut by another, putty where the
/// ground shakes, what strips are put on with.
List shopping_list(const wall::Project& project, const rules::Assessment& assessment,
                   const mounts::CardPlan* card);

/// A tool and what it is for.
struct Tool {
    std::string title;
    std::string why;
};

/// What the planned work takes, by the fixings, the wall, the datum and the mounts still to be cut.
std::vector<Tool> tool_list(const wall::Project& project, const rules::Assessment& assessment);

}  // namespace wallwright::buying

template <>
struct wallwright::wall::Names<wallwright::buying::Kind> {
    static constexpr std::string_view values[] = {"fixings", "cord",    "frames", "card",
                                                  "tape",    "cutting", "other"};
};
