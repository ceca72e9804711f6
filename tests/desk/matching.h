// A wall with prints and frames that do not match yet.
#pragma once

#include "desk/bench/match_choice.h"
#include "support/scenes.h"

#include <thread>

namespace wallwright::desk {

inline void add_print(wall::Project& project, const std::string& id, geometry::Size size) {
    wall::Print print;
    print.id = {id};
    print.title = id;
    print.title[0] = static_cast<char>(print.title[0] - 'a' + 'A');
    print.size = size;
    project.prints.push_back(print);
}

/// Oak holds Reed, which is small for it; Ash, smaller, is empty, and Elm too small for any print.
/// Ebb would do in Oak. Loch is too large for all. No frame has a mount.
inline wall::Project mixed_drawers() {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_waiting(project, "oak", {430, 530});
    scenes::add_waiting(project, "ash", {250, 300});
    scenes::add_waiting(project, "elm", {90, 90});
    add_print(project, "reed", {130, 180});
    add_print(project, "ebb", {280, 380});
    add_print(project, "loch", {900, 1200});
    project.pieces[0].print = wall::PrintId{"reed"};
    return project;
}

/// Until the answer for the wall as it is now is there.
inline void wait_for(MatchChoice& choice, Session& session) {
    do {
        choice.follow(session);
        std::this_thread::yield();
    } while (choice.is_stale() || choice.is_running());
    choice.follow(session);
}

}  // namespace wallwright::desk
