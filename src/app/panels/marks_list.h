// Every pencil mark with its measures.
#pragma once

#include "app/widgets.h"

namespace wallwright::app {

/// Choosing one selects its piece and points the mark out.
void marks_list(Ui& ui, desk::Session& session);

}  // namespace wallwright::app
