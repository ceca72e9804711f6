// The measured elevation to a standard scale, with its key.
#pragma once

#include "pages/sheets.h"

namespace wallwright::pages {

/// First the elevation. Then the waiting pieces, where it left them no room, and a detail of each
/// group for whose marks' numbers it had no room.
std::vector<draw::PageDrawing> elevation_sheets(const wall::Project& project,
                                                const rules::Assessment& assessment,
                                                const SheetOptions& options);

}  // namespace wallwright::pages
