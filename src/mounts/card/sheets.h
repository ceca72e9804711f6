// The sheets that a lot may be cut from.
#pragma once

#include "mounts/card/card_plan.h"

namespace wallwright::mounts {

/// at_hand: these alone, and as many of those to buy as blanks are kept on. all: those to buy too,
/// and full sheets where the project has none to buy of this card.
enum class SheetChoice { at_hand, all };

/// Fills in the sheets of the lot and their origins, drop-outs of its windows last; a grain keeps
/// its blanks unturned. A drop-out that would give no blank of the lot is left out.
void offer_sheets(const wall::Project& project, CardLot& lot, SheetChoice choice);

/// The size that card is made in: 1120 x 815 mm (UK board makers' catalogues, from memory), or 40 x
/// 32 in where inches are used (common practice, no source).
geometry::Size full_sheet(units::LengthUnit unit);

/// Those of the project that are of this card, if only to buy or to count anew; never null.
std::vector<const wall::CardSheet*> recorded(const wall::Project& project, const CardLot& lot);

}  // namespace wallwright::mounts
