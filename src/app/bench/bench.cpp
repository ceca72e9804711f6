#include "app/actions.h"
#include "app/bench/bench_keys.h"
#include "app/panels/bar_button.h"
#include "app/panels/panels.h"
#include "desk/bench/bench_pieces.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using desk::BenchView;
using desk::MountSide;
using Buttons = std::vector<BarButton>;

constexpr float kEdge = 14;   ///< px at a scale of 1, as is this.
constexpr float kApart = 22;  ///< Between the views and what one sees of a mount.

struct Choice {
    BenchView view;
    const char* name;
    const char* words;
    const char* why;
};

constexpr Choice kChoices[] = {
    {BenchView::mount, "bench/view-mount", "Mount",
     "The mount of one piece in its frame, from the front and from the back."},
    {BenchView::prints, "bench/view-prints", "Prints and frames",
     "Which print goes into which frame."},
    {BenchView::card, "bench/view-card", "Card",
     "The sheets of card, and the blanks that are cut from them."}};

Buttons view_buttons(const State& state) {
    Buttons buttons;
    for (const Choice& choice : kChoices)
        buttons.push_back({choice.name, choice.words, choice.why, state.bench.view == choice.view,
                           true, [view = choice.view](State& changed) {
                               let_go(changed);
                               changed.bench.view = view;
                           }});
    return buttons;
}

void show_side(State& state, MountSide side) {
    if (state.bench.side != side)
        turn_mount_over(state);
}

/// Front or back of the mount, and on the back which of its boards; `terse` says their numbers
/// alone.
Buttons side_buttons(const State& state, bool terse) {
    const std::size_t layers = desk::layer_count(state.session);
    if (state.bench.view != BenchView::mount || layers == 0)
        return {};
    const bool is_back = state.bench.side == MountSide::back;
    Buttons buttons{{"bench/front", "Front", "As it will look (B)", !is_back, true,
                     [](State& changed) { show_side(changed, MountSide::front); }},
                    {"bench/back", "Back", "As it is marked and cut, face down (B)", is_back, true,
                     [](State& changed) { show_side(changed, MountSide::back); }}};
    if (!is_back || layers < 2)
        return buttons;
    const std::size_t shown = std::min(state.bench.layer, layers - 1);
    for (std::size_t i = 0; i < layers; ++i)
        buttons.push_back({fmt::format("bench/layer-{}", i + 1),
                           fmt::format("{}{}", terse ? "" : "Layer ", i + 1),
                           i == 0 ? "The board that one sees first (Up)"
                                  : "The board behind the one before (Down)",
                           shown == i, true, [i](State& changed) { changed.bench.layer = i; }});
    return buttons;
}

void show_view(Ui& ui, State& state, const ScreenArea& area) {
    switch (state.bench.view) {
        case BenchView::mount:
            return bench_mount(ui, state, area);
        case BenchView::prints:
            return bench_prints(ui, state, area);
        case BenchView::card:
            return bench_card(ui, state, area);
    }
}

/// Gives the height of what it took, px: a second row where one is too short.
float show_rows(Ui& ui, State& state, float width) {
    const Buttons views = view_buttons(state);
    const float row = ui.px(kTopBarHeight);
    const float edge = ui.px(kEdge);
    Buttons sides = side_buttons(state, false);
    if (2 * edge + width_of(ui, sides) > width)
        sides = side_buttons(state, true);
    const float side_width = width_of(ui, sides);
    const bool in_one = edge + width_of(ui, views) + ui.px(kApart) + side_width + edge <= width;
    show_buttons(ui, state, views, edge);
    if (sides.empty())
        return row;
    if (in_one)
        show_buttons(ui, state, sides, width - edge - side_width);
    else
        show_buttons(ui, state, sides, edge, row - ui.px(8));
    return in_one ? row : 2 * row - ui.px(8);
}

}  // namespace

void bench(Ui& ui, State& state) {
    // The wall is out of sight, and so is the hand on it.
    state.pointer.cancel(state.session);
    state.pointer_at.reset();
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const ImVec2 size = ImGui::GetContentRegionAvail();
    if (size.x < 1 || size.y < 1)
        return;
    const float row = show_rows(ui, state, size.x);
    if (size.y > row)
        show_view(ui, state, {{at.x, at.y + row}, {at.x + size.x, at.y + size.y}});
}

}  // namespace wallwright::app
