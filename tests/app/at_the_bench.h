// A person with a mount on the bench, in the whole window.
#pragma once

#include "person.h"
#include "support/scenes.h"

namespace wallwright::app {

inline wall::Print print_of(const char* id, double width, double height) {
    wall::Print print;
    print.id = {id};
    print.title = id;
    print.size = {width, height};
    return print;
}

/// Kelp with a mount over Ebb, Dune with nothing in its frame; Reed and Flow in the drawer.
inline wall::Project wall_with_drawer() {
    wall::Project project = scenes::wall_of(3600, 2400);
    project.title = "Hall";
    wall::Piece& kelp = scenes::add_piece(project, "kelp", {1000, 1300}, {400, 500});
    project.prints = {print_of("ebb", 210, 297), print_of("reed", 100, 150),
                      print_of("flow", 148, 210)};
    project.mounts.emplace_back().id = {"cream"};
    kelp.print = wall::PrintId{"ebb"};
    kelp.mount = wall::MountId{"cream"};
    scenes::add_waiting(project, "dune", {300, 400});
    return project;
}

/// A person in the step mounts, with Kelp on the bench.
class AtTheBench : public Person {
  public:
    explicit AtTheBench(wall::Project project = wall_with_drawer(), ImVec2 size = {1280, 800},
                        float scale = 1)
        : Person(std::move(project), size, scale) {
        state.step = desk::Step::mounts;
        state.session.selection.set(wall::PieceId{"kelp"});
        window.settle();
    }

    [[nodiscard]] const wall::Mount& mount() const {
        const wall::Project& project = state.session.project();
        return *wall::find(project, *wall::find(project, wall::PieceId{"kelp"})->mount);
    }
    [[nodiscard]] mounts::MountDesign design() const {
        const wall::Project& project = state.session.project();
        return *mounts::design_of(project, *wall::find(project, wall::PieceId{"kelp"}));
    }
    [[nodiscard]] std::string last_step() const { return state.session.history().undo_label(); }
    [[nodiscard]] ImVec2 middle(const std::string& name) const {
        const ItemBox& box = window.item(name);
        return {(box.min.x + box.max.x) / 2, (box.min.y + box.max.y) / 2};
    }
    /// Opens a section that is folded.
    void open(const char* name, const char* inside) {
        if (!window.has(inside))
            window.click(name);
    }
};

}  // namespace wallwright::app
