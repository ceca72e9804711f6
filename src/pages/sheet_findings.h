// What the wall says about itself, and what to be careful of.
#pragma once

#include "pages/sheets.h"

namespace wallwright::pages {

std::vector<draw::PageDrawing> finding_sheets(const wall::Project& project,
                                              const rules::Assessment& assessment,
                                              const SheetOptions& options);

}  // namespace wallwright::pages
