// A row of the column that changes something of the whole project.
#pragma once

#include "desk/session.h"

#include <functional>

namespace wallwright::app {

/// As one step of that name; what would not be sound becomes a notice and changes nothing.
void change_project(desk::Session& session, const char* step,
                    const std::function<void(wall::Project&)>& by_hand);

}  // namespace wallwright::app
