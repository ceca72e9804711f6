// Sentences of the card plan: each cut, what is left, what it takes.
#pragma once

#include "mounts/card/card_plan.h"

#include <string>
#include <vector>

namespace wallwright::pages {

/// "Kelp", or "Kelp, layer 2 of 3".
std::string blank_name(const mounts::BlankOwner& owner);

/// For each cut of the sheet: the piece in hand, from which edge and how far, what comes off.
std::vector<std::string> cut_sentences(const mounts::CardLot& lot, const mounts::CutSheet& sheet,
                                       units::LengthUnit unit);

/// What is left of the sheet after all cuts, or that nothing is.
std::string left_words(const mounts::CutSheet& sheet, units::LengthUnit unit);

/// How many sheets, how much waste, and whether fewer would do.
std::string lot_words(const mounts::CardLot& lot);

/// What is bought and what having the mounts cut would cost; one sentence each.
std::vector<std::string> cost_sentences(const mounts::CardCost& cost);

}  // namespace wallwright::pages
