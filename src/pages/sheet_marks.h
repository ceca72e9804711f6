// Every pencil mark, to be ticked off at the wall.
#pragma once

#include "pages/sheets.h"

namespace wallwright::pages {

std::vector<draw::PageDrawing> mark_sheets(const wall::Project& project,
                                           const rules::Assessment& assessment,
                                           const SheetOptions& options);

}  // namespace wallwright::pages
