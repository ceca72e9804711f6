#include "app/actions.h"

#include <imgui_internal.h>

#include <algorithm>

namespace wallwright::app {

namespace {

template <desk::Step kStep>
void go_to(State& state) {
    state.step = kStep;
}

void fit(State& state) {
    state.fit_wanted = true;
}

void show_keys(State& state) {
    state.dialog = KeysDialog{};
}

void show_settings(State& state) {
    state.dialog = SettingsDialog{};
}

constexpr Action kActions[] = {
    {ActionId::new_wall, "New wall...", "Ctrl+N",
     "Starts another wall: its size, what stands before it, its frames.", want_new},
    {ActionId::open, "Open...", "Ctrl+O", "Opens a wall from a file.", want_open},
    {ActionId::demo, "The demo wall", "", "Shows a wall to try things on.", want_demo},
    {ActionId::save, "Save", "Ctrl+S", "Saves the wall to its file.", save},
    {ActionId::save_as, "Save as...", "Ctrl+Shift+S", "Saves the wall to another file.", save_as},
    {ActionId::import_frames, "Import a table of frames...", "Ctrl+I",
     "Adds the frames of a CSV file to the wall.", want_import},
    {ActionId::sheets, "Print sheets...", "Ctrl+P",
     "Writes the pages to take to the wall, as a PDF.", want_sheets},
    {ActionId::elevation, "Picture of the wall...", "Ctrl+E",
     "Writes the elevation as PNG, SVG or PDF.", want_elevation},
    {ActionId::marks, "Marks as a table...", "Ctrl+M", "Writes every mark as CSV, in mm.",
     want_marks},
    {ActionId::settings, "Settings...", "Ctrl+,", "Light or dark, and the size of the text.",
     show_settings},
    {ActionId::quit, "Quit", "Ctrl+Q", "Leaves; asks first when there is work to save.", want_quit},
    {ActionId::keys, "Keys...", "?", "Shows every key; so does F1.", show_keys},
    {ActionId::fit, "Fit the wall", "F", "Shows the whole wall in the window.", fit},
    {ActionId::step_room, "Room", "1", "The wall, what stands before it and what is in it.",
     go_to<desk::Step::room>},
    {ActionId::step_pieces, "Pieces", "2", "Frames, mounts and prints.", go_to<desk::Step::pieces>},
    {ActionId::step_arrange, "Arrange", "3", "Where each piece goes.", go_to<desk::Step::arrange>},
    {ActionId::step_hang, "Hang", "4", "Fixings, loads and marks.", go_to<desk::Step::hang>}};

bool is_text_typed() {
    return ImGui::GetCurrentContext() != nullptr && ImGui::GetIO().WantTextInput;
}

/// Puts away what is nearest: a menu, the gesture, the selection. A dialog sees to it itself.
bool escape(State& state) {
    if (!std::holds_alternative<std::monostate>(state.dialog))
        return true;
    if (state.popup_seen)
        return true;
    if (state.pointer.is_busy())
        state.pointer.cancel(state.session);
    else
        state.session.selection.clear();
    return true;
}

}  // namespace

std::span<const Action> all_actions() {
    return kActions;
}

const Action& action(ActionId id) {
    return kActions[static_cast<std::size_t>(id)];
}

void run(desk::Session& session, const desk::Command& command) {
    if (std::string hindrance = command.hindrance(session); !hindrance.empty())
        session.notice = desk::Notice{true, std::move(hindrance)};
    else
        command.run(session);
}

bool press_key(State& state, std::string_view key) {
    if (key.empty() || is_text_typed())
        return false;
    if (key == "Escape")
        return escape(state);
    if (!std::holds_alternative<std::monostate>(state.dialog) || state.popup_seen)
        return false;
    if (key == "F1")
        key = action(ActionId::keys).key;
    const auto* meant = std::ranges::find(kActions, key, &Action::key);
    if (meant != std::end(kActions)) {
        meant->run(state);
        return true;
    }
    const desk::Command* command = desk::command_for_key(key);
    if (command != nullptr)
        run(state.session, *command);
    return command != nullptr;
}

}  // namespace wallwright::app
