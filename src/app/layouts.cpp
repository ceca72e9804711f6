#include "app/layouts.h"

namespace wallwright::app {

namespace {

void tell(State& state, const std::string& why) {
    state.session.notice = desk::Notice{false, why + "."};
}

}  // namespace

void try_layouts(State& state) {
    if (const std::string why = desk::LayoutChoice::hindrance(state.session); !why.empty())
        return tell(state, why);
    state.step = desk::Step::arrange;
    state.layouts.search(state.session);
}

void show_next_layout(State& state, int step) {
    if (!state.layouts.is_open() || state.step != desk::Step::arrange)
        return tell(state, "Try layouts first");
    state.layouts.show_next(state.session, step);
}

void take_layout(State& state) {
    if (const auto shown = state.layouts.shown())
        state.layouts.take(state.session, *shown);
    else
        tell(state, "Show a layout first");
}

void put_layout_away(State& state) {
    state.layouts.leave(state.session);
}

bool press_layout_key(State& state, std::string_view key) {
    if (!state.layouts.shown())
        return false;
    if (key == "Right" || key == "Down")
        show_next_layout(state, 1);
    else if (key == "Left" || key == "Up")
        show_next_layout(state, -1);
    else if (key == "Enter")
        take_layout(state);
    else
        return false;
    return true;
}

void keep_layouts(State& state) {
    if (state.step != desk::Step::arrange || !state.layouts.is_open()) {
        put_layout_away(state);
        state.layout_pointed_at.reset();
    }
    state.layouts.update(state.session);
}

}  // namespace wallwright::app
