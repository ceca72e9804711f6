// Papers at true size to hold against the wall or the frame.
#pragma once

#include "pages/sheets.h"

namespace wallwright::pages {

/// Of the planned pieces that have marks, in the order of hanging and of the kind that
/// `options.templates` names. Without the sheets' numbers.
std::vector<draw::PageDrawing> hanging_template_sheets(const wall::Project& project,
                                                       const rules::Assessment& assessment,
                                                       const SheetOptions& options);

}  // namespace wallwright::pages
