// One sheet of card with its blanks and the cuts that bring them out.
#pragma once

#include "draw/drawing.h"
#include "mounts/card/card_plan.h"
#include "units/length.h"

namespace wallwright::draw {

struct CardSheetOptions {
    double scale = 0.2;  ///< mm on paper for one mm of card.
    bool cuts = true;    ///< Each with its number.
    bool measures = true;
};

/// The sheet's lower left corner is the origin. Blanks in the card's colour with the piece's title,
/// layer and size, kept ones marked, windows that drop out in thin lines, offcuts hatched with
/// their size, the margin that is not used, which way a grain runs.
WallDrawing card_sheet(const mounts::CardLot& lot, std::size_t sheet, units::LengthUnit unit,
                       const CardSheetOptions& options);

/// From a sheet's own coordinates, y down from its top edge, to those of that drawing.
geometry::Rect<geometry::Wall> in_card_sheet(const mounts::CardLot& lot, std::size_t sheet,
                                             const mounts::OnSheet& place);

}  // namespace wallwright::draw
