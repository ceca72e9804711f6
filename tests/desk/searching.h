// A search for layouts that ends by its rounds, so that tests do not hang on the clock.
#pragma once

#include "desk/layout_choice.h"
#include "support/scenes.h"

#include <thread>

namespace wallwright::desk {

inline arrange::ArrangeOptions few_rounds() {
    arrange::ArrangeOptions options;
    options.seconds = 600;
    options.rounds = 40;
    return options;
}

inline void wait_for(LayoutChoice& choice, Session& session) {
    while (choice.is_searching())
        std::this_thread::yield();
    choice.update(session);
}

/// One hung and four planned or waiting pieces over a sofa.
inline wall::Project some_pieces() {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_furniture(project, wall::FurnitureType::sofa,
                          geometry::Rect<geometry::Wall>::at({800, 0}, {1900, 800}));
    scenes::add_hung(project, "kelp", {1600, 1300}, {400, 500});
    scenes::add_piece(project, "dune", {300, 1300}, {300, 400});
    scenes::add_piece(project, "gull", {3000, 900}, {300, 400});
    scenes::add_waiting(project, "moss", {400, 300});
    scenes::add_waiting(project, "tide", {200, 300});
    return project;
}

}  // namespace wallwright::desk
