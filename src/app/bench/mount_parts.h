// The parts of the column about one mount, each under a heading that folds it.
#pragma once

#include "app/panels/piece_parts.h"
#include "mounts/design/mount_design.h"

#include <functional>
#include <optional>
#include <string_view>

namespace wallwright::app {

/// A piece with its mount as it was when the panel began: a change replaces the project under it.
struct OneMount {
    OnePiece one;
    wall::Mount mount;
    std::optional<mounts::MountDesign> design;  ///< Empty as long as a print is missing.
};

/// The piece on the bench.
std::optional<OnePiece> shown_piece(const desk::Session& session);
/// The same where it has a mount.
std::optional<OneMount> mount_on_bench(const desk::Session& session);

/// Which print is in it, where it shows one.
void mount_print_choice(Ui& ui, State& state, const OnePiece& one);
void mount_prints(Ui& ui, State& state, const OnePiece& one);
void mount_frame(Ui& ui, State& state, const OnePiece& one);
void mount_borders(Ui& ui, State& state, const OneMount& it);
void mount_card(Ui& ui, State& state, const OneMount& it);
void mount_windows(Ui& ui, State& state, const OneMount& it);
void mount_depth(Ui& ui, State& state, const OneMount& it);
/// What there is to say against it, below the column's other parts.
void mount_remarks(Ui& ui, const State& state);

/// Changes the mount for all that have it, as one step: "Paint the mount of Kelp" for the verb
/// "Paint".
void change_mount(State& state, const OneMount& it, std::string_view verb,
                  const std::function<void(wall::Mount&)>& by_hand);

}  // namespace wallwright::app
