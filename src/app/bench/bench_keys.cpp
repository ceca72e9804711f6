#include "app/bench/bench_keys.h"

#include "app/bench/boards.h"
#include "desk/bench/bench_pieces.h"
#include "desk/command.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using desk::BenchView;
using desk::MountSide;

void go_to_layer(State& state, int by) {
    const std::size_t count = desk::layer_count(state.session);
    if (state.bench.side == MountSide::front || count == 0)
        return;
    const int last = static_cast<int>(count) - 1;
    const int now = static_cast<int>(std::min(state.bench.layer, count - 1));
    state.bench.layer = static_cast<std::size_t>(std::clamp(now + by, 0, last));
}

void press_arrow(State& state, std::string_view key) {
    if (key == "Left")
        desk::select_mount(state.session, -1);
    else if (key == "Right")
        desk::select_mount(state.session, 1);
    else if (key == "Up")
        go_to_layer(state, -1);
    else if (key == "Down")
        go_to_layer(state, 1);
}

/// What one may do to a piece while the wall is out of sight.
bool is_seen_on_bench(desk::CommandId id) {
    using enum desk::CommandId;
    constexpr desk::CommandId kSeen[] = {
        undo, redo, select_nothing, select_next, select_previous, turn, duplicate, remove};
    return std::ranges::find(kSeen, id) != std::end(kSeen);
}

}  // namespace

bool bench_key(State& state, std::string_view key) {
    constexpr std::string_view kArrows[] = {"Left",       "Right",       "Up",       "Down",
                                            "Shift+Left", "Shift+Right", "Shift+Up", "Shift+Down"};
    if (board_key(state, key))
        return true;
    if (state.step != desk::Step::mounts)
        return false;
    if (std::ranges::find(kArrows, key) != std::end(kArrows)) {
        if (state.bench.view == BenchView::mount)
            press_arrow(state, key);
        return true;
    }
    const desk::Command* command = desk::command_for_key(key);
    if (command == nullptr || is_seen_on_bench(command->id))
        return false;
    state.session.notice =
        desk::Notice{false, fmt::format("{} is for the wall; go to Arrange first.", command->name)};
    return true;
}

void turn_mount_over(State& state) {
    if (state.step != desk::Step::mounts || state.bench.view != BenchView::mount) {
        state.session.notice = desk::Notice{false, "Go to the mounts first."};
        return;
    }
    state.bench.side = state.bench.side == MountSide::front ? MountSide::back : MountSide::front;
    state.bench.look().fitted = true;
}

}  // namespace wallwright::app
