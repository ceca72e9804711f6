// All pieces by name, to be chosen.
#pragma once

#include "app/widgets.h"

namespace wallwright::app {

/// Under a heading for each state: letter, title, size. Choosing one selects it, with Shift or Ctrl
/// beside the others.
void piece_list(Ui& ui, desk::Session& session);

}  // namespace wallwright::app
