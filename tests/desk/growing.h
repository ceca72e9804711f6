// A small wall that can grow, and a way to wait for what is searched in the background.
#pragma once

#include "desk/session.h"
#include "support/scenes.h"

#include <chrono>
#include <stdexcept>
#include <thread>

namespace wallwright::desk {

/// Two pieces hang, two wait, and a lamp stands at the right.
inline wall::Project growing_wall() {
    wall::Project project = scenes::wall_of(4000, 2400);
    scenes::add_hung(project, "kelp", {800, 1300}, {400, 400});
    scenes::add_hung(project, "moss", {1260, 1300}, {400, 400});
    scenes::add_waiting(project, "dune", {400, 400});
    scenes::add_waiting(project, "tide", {300, 400});
    scenes::add_furniture(project, wall::FurnitureType::lamp, {{3200, 0}, {3500, 1600}}).title =
        "Floor lamp";
    project.target = project.room.furniture.front().id;
    return project;
}

/// Calls `look` until it says that there is nothing to wait for; throws after a minute.
template <class Look>
void wait_for(Look look) {
    using namespace std::chrono_literals;
    const auto end = std::chrono::steady_clock::now() + 60s;
    while (!look()) {
        if (std::chrono::steady_clock::now() > end)
            throw std::runtime_error("the search does not come to an end");
        std::this_thread::sleep_for(2ms);
    }
}

}  // namespace wallwright::desk
