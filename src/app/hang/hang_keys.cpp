#include "app/actions.h"
#include "app/hang/hang_parts.h"
#include "desk/command.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace wallwright::app {

namespace {

using desk::HangView;

bool page_key(PagePreview& preview, std::string_view key) {
    if (key == "PageDown" || key == "Right" || key == "Down")
        preview.go_by(1);
    else if (key == "PageUp" || key == "Left" || key == "Up")
        preview.go_by(-1);
    else if (key == "Home")
        preview.go_to(0);
    else if (key == "End")
        preview.go_to(preview.pages().size());
    else
        return false;
    return true;
}

bool day_key(State& state, std::string_view key) {
    state.day.follow(state.session);
    if (key == "Space" || key == "Enter")
        state.day.tick(state.session);
    else if (key == "Backspace" || key == "Left" || key == "Up")
        state.day.back();
    else if (key == "Right" || key == "Down")
        state.day.skip();
    else
        return false;
    return true;
}

/// What one may do while the wall is out of sight.
bool is_for_any_view(desk::CommandId id) {
    using enum desk::CommandId;
    return id == undo || id == redo || id == select_nothing;
}

void show(State& state, HangView view) {
    let_go(state);
    state.step = desk::Step::hang;
    state.hang_view = view;
}

}  // namespace

bool is_wall_hidden(const State& state) {
    return state.step == desk::Step::hang && state.hang_view != HangView::wall;
}

bool back_to_the_wall(State& state) {
    if (!is_wall_hidden(state))
        return false;
    state.hang_view = HangView::wall;
    return true;
}

bool hang_key(State& state, std::string_view key) {
    if (!is_wall_hidden(state))
        return false;
    if (state.hang_view == HangView::pages ? page_key(state.preview, key) : day_key(state, key))
        return true;
    const desk::Command* command = desk::command_for_key(key);
    if (command == nullptr || is_for_any_view(command->id))
        return false;
    state.session.notice = desk::Notice{
        false, fmt::format("{} is for the wall; Escape shows it again.", command->name)};
    return true;
}

void preview_pages(State& state) {
    show(state, HangView::pages);
}

void hang_step_by_step(State& state) {
    show(state, HangView::day);
}

}  // namespace wallwright::app
