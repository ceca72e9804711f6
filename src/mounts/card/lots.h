// Blanks of all mounts that are to be cut, those of one card together.
#pragma once

#include "mounts/card/card_plan.h"

#include <set>

namespace wallwright::mounts {

struct LotList {
    std::vector<CardLot> lots;  ///< Card, colour, blanks, owners, windows; none is kept yet.
    std::vector<std::string> notes;
};

/// `only` as in CardOptions, without the pieces of `left_out`; what cannot be cut is left out with
/// a note.
LotList lots_of(const wall::Project& project, const std::vector<wall::PieceId>& only,
                const std::set<wall::PieceId>& left_out);
/// Pieces of which a blank is in no sheet of the plans.
std::set<wall::PieceId> pieces_left_out(const std::vector<CardLot>& lots);

/// Pieces whose blanks are in the lots.
std::vector<wall::PieceId> pieces_cut(const std::vector<CardLot>& lots);

/// "drop-out of Kelp", "drop-out 2 of Kelp, layer 2 of 3".
std::string title_of_drop_out(const CardLot& lot, std::size_t window);
/// "Cream" for "Cream, 420 x 300 mm" of that size, whichever way it lies; other titles stay.
std::string without_size(std::string title, geometry::Size size, units::LengthUnit unit);
/// "420 x 300 mm".
std::string size_text(geometry::Size size, units::LengthUnit unit);

}  // namespace wallwright::mounts
