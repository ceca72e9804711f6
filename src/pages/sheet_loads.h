// What each piece weighs, what holds it, and how much of the rating is in use.
#pragma once

#include "pages/sheets.h"

namespace wallwright::pages {

std::vector<draw::PageDrawing> load_sheets(const wall::Project& project,
                                           const rules::Assessment& assessment,
                                           const SheetOptions& options);

}  // namespace wallwright::pages
