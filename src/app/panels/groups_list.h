// The groups on the wall with their measures.
#pragma once

#include "app/widgets.h"

namespace wallwright::app {

/// Each under its pieces' letters, which select them.
void groups_list(Ui& ui, desk::Session& session);

}  // namespace wallwright::app
