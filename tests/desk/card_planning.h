// A wall whose mounts are to be cut from two kinds of card.
#pragma once

#include "desk/bench/card_choice.h"
#include "support/scenes.h"

#include <thread>

namespace wallwright::desk {

inline constexpr wall::Colour kCream{0xF3, 0xEC, 0xDC};
inline constexpr wall::Colour kSlate{0x46, 0x4E, 0x57};

inline void add_mounted(wall::Project& project, const std::string& id, geometry::Size outside,
                        wall::Colour colour) {
    wall::Mount mount;
    mount.id = {id};
    mount.colour = colour;
    wall::Print print;
    print.id = {id};
    print.size = {outside.width * 0.5, outside.height * 0.5};
    project.mounts.push_back(mount);
    project.prints.push_back(print);
    wall::Piece& piece = scenes::add_waiting(project, id, outside);
    piece.mount = mount.id;
    piece.print = print.id;
}

inline void add_sheet(wall::Project& project, const std::string& id, geometry::Size size,
                      wall::Colour colour, int count) {
    wall::CardSheet sheet;
    sheet.id = {id};
    sheet.title = id;
    sheet.size = size;
    sheet.colour = colour;
    sheet.count = count;
    project.card.push_back(sheet);
}

/// Kelp and Dune from cream card, of which there are two sheets, Gull from slate, of which there is
/// one with a grain.
inline wall::Project cards() {
    wall::Project project = scenes::wall_of(3600, 2400);
    add_mounted(project, "kelp", {430, 530}, kCream);
    add_mounted(project, "dune", {330, 430}, kCream);
    add_mounted(project, "gull", {280, 380}, kSlate);
    add_sheet(project, "cream", {1120, 815}, kCream, 2);
    add_sheet(project, "slate", {700, 500}, kSlate, 1);
    project.card.back().grain = wall::Grain::upright;
    return project;
}

inline mounts::CardOptions few_rounds_of_card() {
    mounts::CardOptions options;
    options.seconds = 600;
    options.rounds = 2;
    return options;
}

/// Until the plan for the wall as it is now is there.
inline void wait_for(CardChoice& choice, Session& session) {
    choice.follow(session);
    do {
        choice.follow(session);
        std::this_thread::yield();
    } while (choice.is_stale() || choice.is_running());
    choice.follow(session);
}

}  // namespace wallwright::desk
