// Where a blank in the hand comes to rest on a sheet: at edges of the sheet and of other blanks.
#pragma once

#include "mounts/card/card_plan.h"

namespace wallwright::desk {

struct SheetSpot {
    double left = 0;  ///< mm from the sheet's left and top edge.
    double top = 0;
    bool holds_left = false;  ///< An edge holds it, across or along.
    bool holds_top = false;
};

/// As near as the sheet without its margin can hold all of it; unchanged where it cannot.
mounts::OnSheet held_inside(const mounts::NestSheet& sheet, mounts::OnSheet place);

/// `place` is where the hand has it, `reach` how far an edge takes hold, mm. The blank's own place
/// does not count. Where no edge holds it rests on a multiple of `step`.
SheetSpot snap_on_sheet(const mounts::CardLot& lot, std::size_t sheet, std::size_t blank,
                        const mounts::OnSheet& place, double reach, double step);

}  // namespace wallwright::desk
