// Strips of paper at true size to hold level against the wall, with all marks of a row on them.
#pragma once

#include "pages/sheets.h"

namespace wallwright::pages {

/// One strip for each row of marks at one height, in bands that are joined at their join marks. A
/// page that says so where there is no such row.
std::vector<draw::PageDrawing> story_strip_pages(const wall::Project& project,
                                                 const rules::Assessment& assessment, Paper paper);

}  // namespace wallwright::pages
