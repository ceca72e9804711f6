// Mounts on the bench, for tests.
#pragma once

#include "desk/bench/mount_tool.h"
#include "support/scenes.h"

namespace wallwright::desk {

inline const wall::PieceId kOnBench{"kelp"};
inline const wall::MountId kKelpsMount{"cream"};

/// Kelp in a frame of 400 x 500 mm with 20 mm of moulding and 6 mm of lip: a blank of 370 x 470 mm
/// of which 5 mm are hidden on each side. Behind its mount a print of 210 x 297 mm, covered by
/// 5 mm: a window of 200 x 287 mm, 85 and 91.5 mm from the blank's edges.
inline wall::Project wall_with_mount() {
    wall::Project project = scenes::wall_of(3600, 2400);
    wall::Piece& kelp = scenes::add_piece(project, "kelp", {1000, 1300}, {400, 500});
    wall::Print print;
    print.id = {"ebb"};
    print.size = {210, 297};
    project.prints.push_back(print);
    project.mounts.emplace_back().id = kKelpsMount;
    kelp.print = print.id;
    kelp.mount = kKelpsMount;
    return project;
}

/// The same with two prints of 120 x 180 mm in a row: windows of 110 x 170 mm with a bar of 30 mm.
inline wall::Project wall_with_two_windows() {
    wall::Project project = wall_with_mount();
    project.prints.front().size = {120, 180};
    wall::Print second = project.prints.front();
    second.id = {"flow"};
    project.prints.push_back(second);
    project.mounts.front().openings = {{{"ebb"}, std::nullopt, {}}, {{"flow"}, std::nullopt, {}}};
    return project;
}

/// A session and a hand on its mount, at 1 mm a pixel.
struct MountHand {
    Session session;
    MountTool tool = {};
    bool alt = false;

    using At = geometry::Point<mounts::Front>;
    [[nodiscard]] MountEvent at(At point) const { return {point, 1, alt}; }
    void drag(At from, At to) {
        tool.press(session, kOnBench, at(from));
        tool.move(session, kOnBench, at(from + 0.5 * (to - from)));
        tool.move(session, kOnBench, at(to));
        tool.release(session, at(to));
    }
    [[nodiscard]] mounts::MountDesign design() const {
        return *mounts::design_of(session.project(), *wall::find(session.project(), kOnBench));
    }
    [[nodiscard]] const wall::Mount& mount() const {
        return *wall::find(session.project(), kKelpsMount);
    }
};

}  // namespace wallwright::desk
