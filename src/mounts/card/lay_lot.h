// One lot laid on its sheets, about the blanks that are kept.
#pragma once

#include "mounts/card/card_plan.h"

namespace wallwright::mounts {

/// Fills in sheets, origins, what is kept, and the plan; what could not be done goes to `notes`.
void lay_lot(const wall::Project& project, CardLot& lot, const CardOptions& options,
             const std::function<bool()>& go_on, std::vector<std::string>& notes);

/// A sentence for each blank that no sheet of the lot's plan holds.
void note_left_out(const wall::Project& project, const CardLot& lot,
                   std::vector<std::string>& notes);

}  // namespace wallwright::mounts
