// A row to choose a size that frames and sheets are sold in.
#pragma once

#include "app/widgets.h"

namespace wallwright::app {

/// The size that was chosen; `now` need not be among them and is "as typed" then.
std::optional<wall::Size> usual_size_row(Ui& ui, const char* name,
                                         const std::vector<wall::NamedSize>& sizes, wall::Size now);

}  // namespace wallwright::app
