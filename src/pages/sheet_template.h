// A board of a mount at true size, to be laid on the back of the card.
#pragma once

#include "pages/mount_job.h"
#include "pages/sheet.h"

namespace wallwright::pages {

/// On one sheet, upright or across, or on two that are joined at a line; none where two are not
/// enough, or where there is no window to cut.
std::vector<draw::PageDrawing> template_sheets(const MountJob& job, std::size_t layer,
                                               units::LengthUnit unit, Paper paper);

}  // namespace wallwright::pages
