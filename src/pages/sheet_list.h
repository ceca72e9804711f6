// What to buy and what to have at hand, to be ticked off.
#pragma once

#include "pages/sheets.h"

namespace wallwright::pages {

/// The shopping list (buying/shopping.h) with prices where they are known, and the tool list.
std::vector<draw::PageDrawing> list_sheets(const wall::Project& project,
                                           const rules::Assessment& assessment,
                                           const SheetOptions& options);

}  // namespace wallwright::pages
