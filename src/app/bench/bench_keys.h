// Keys of the step mounts.
#pragma once

#include "app/state.h"

#include <string_view>

namespace wallwright::app {

/// Left and Right go from mount to mount, Up and Down from layer to layer on its back. True too for
/// every key in the step mounts that would change the wall, which is not in sight: that is said.
bool bench_key(State& state, std::string_view key);

/// Its back, or its front again; says to go to the mounts first where they are not in sight.
void turn_mount_over(State& state);

}  // namespace wallwright::app
