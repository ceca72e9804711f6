// Blanks of all mounts that are to be cut, those of one card together.
#pragma once

#include "mounts/card/card_plan.h"

namespace wallwright::mounts {

struct LotList {
    std::vector<CardLot> lots;  ///< Card, colour, blanks, owners, windows; none is kept yet.
    std::vector<std::string> notes;
};

/// `only` as in CardOptions; what cannot be cut is left out with a note.
LotList lots_of(const wall::Project& project, const std::vector<wall::PieceId>& only);

/// "Kelp", or "Kelp, layer 2" where its mount has several.
std::string name_of(const BlankOwner& owner);
/// "drop-out of Kelp", "drop-out 2 of Kelp, layer 2".
std::string title_of_drop_out(const CardLot& lot, std::size_t window);
/// "420 x 300 mm".
std::string size_text(geometry::Size size, units::LengthUnit unit);

}  // namespace wallwright::mounts
