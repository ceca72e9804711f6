#include "app/actions.h"
#include "app/bench/bench_keys.h"
#include "app/bench/boards.h"
#include "app/hang/hang_parts.h"
#include "app/layouts.h"
#include "app/plans.h"

#include <imgui_internal.h>  // ClearActiveID

#include <algorithm>

namespace wallwright::app {

namespace {

template <desk::Step kStep>
void go_to(State& state) {
    state.step = kStep;
}

template <int kStep>
void show_other_layout(State& state) {
    show_next_layout(state, kStep);
}

template <int kBy>
void step_stages_by(State& state) {
    step_stages(state, kBy);
}

void fit(State& state) {
    desk::Look& look = state.bench.look();
    look.fitted = true;
    look.fitted_for.reset();
    for (desk::Look* one : {&state.preview.look, &state.day_picture.look}) {
        one->fitted = true;
        one->fitted_for.reset();
    }
    state.fitted = true;
    state.fitted_for = {};
}

void show_keys(State& state) {
    state.dialog = KeysDialog{};
}

void show_settings(State& state) {
    state.dialog = SettingsDialog{};
}

void type_in_column(State& state) {
    state.type_wanted = true;
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
    {ActionId::card_plan, "Card plan...", "Ctrl+K",
     "Writes how the card is cut, sheet by sheet, as a PDF.", want_card_plan},
    {ActionId::cutting_sheets, "Cutting sheets...", "Ctrl+Shift+K",
     "Writes for each mount that is still to be cut its boards with every figure, as a PDF.",
     want_cutting_sheets},
    {ActionId::plan_and_cutting, "Plan and cutting sheets...", "",
     "Writes how the card is cut, then each mount with every figure, as one PDF.",
     want_plan_and_cutting},
    {ActionId::settings, "Settings...", "Ctrl+,", "Light or dark, and the size of the text.",
     show_settings},
    {ActionId::quit, "Quit", "Ctrl+Q", "Leaves; asks first when there is work to save.", want_quit},
    {ActionId::keys, "Keys...", "?", "Shows every key; so does F1.", show_keys},
    {ActionId::fit, "Fit the wall", "F",
     "Shows the whole wall, or all on the bench, in the window.", fit},
    {ActionId::type, "Type a number", "Enter",
     "Goes to the first field at the right; Tab goes on to the next, Escape back to the wall.",
     type_in_column},
    {ActionId::layouts, "Try layouts", "L",
     "Looks for ways to hang all pieces that may move, and shows them under the wall.",
     try_layouts},
    {ActionId::next_layout, "Next layout", "PageDown",
     "Shows the next of the layouts on the wall; arrows go on, Enter takes it.",
     show_other_layout<1>},
    {ActionId::previous_layout, "Layout before", "PageUp",
     "Shows the layout before this one on the wall.", show_other_layout<-1>},
    {ActionId::take_layout, "Take this layout", "Shift+L",
     "Keeps the layout that is shown, as one step.", take_layout},
    {ActionId::step_room, "Room", "1", "The wall, what stands before it and what is in it.",
     go_to<desk::Step::room>},
    {ActionId::step_pieces, "Pieces", "2", "Frames, mounts and prints.", go_to<desk::Step::pieces>},
    {ActionId::step_mounts, "Mounts", "3", "Which print in which frame, and the card between them.",
     go_to<desk::Step::mounts>},
    {ActionId::step_arrange, "Arrange", "4", "Where each piece goes.", go_to<desk::Step::arrange>},
    {ActionId::step_hang, "Hang", "5", "Fixings, loads and marks.", go_to<desk::Step::hang>},
    {ActionId::stage_before, "Earlier stage", "Shift+PageUp",
     "Shows the wall one stage of growth before.", step_stages_by<-1>},
    {ActionId::stage_after, "Later stage", "Shift+PageDown",
     "Shows the wall one stage of growth after.", step_stages_by<1>},
    {ActionId::turn_over, "Turn the mount over", "B",
     "Shows its back, as it is marked and cut, or its front again.", turn_mount_over},
    {ActionId::keep_chosen, "Keep or let go", "K",
     "A print stays in its frame, or a blank where it lies on its card, whatever else is better.",
     keep_chosen},
    {ActionId::turn_blank, "Turn the blank", "R",
     "A quarter turn of the blank of card in the hand.", turn_blank},
    {ActionId::preview_pages, "Preview the pages", "V",
     "Shows what will be printed, page by page; Escape goes back to the wall.", preview_pages},
    {ActionId::hang_step_by_step, "Hang step by step", "M",
     "One mark at a time in large figures: Space says it is done, Backspace goes back.",
     hang_step_by_step}};

bool is_text_typed() {
    return ImGui::GetCurrentContext() != nullptr && ImGui::GetIO().WantTextInput;
}

/// Puts away what is nearest: a menu, the gesture, the selection. A dialog sees to it itself.
bool escape(State& state) {
    if (!std::holds_alternative<std::monostate>(state.dialog))
        return true;
    if (state.popups > 0)
        return true;
    if (is_hand_busy(state))
        let_go(state);
    else if (state.layouts.shown())
        put_layout_away(state);
    else if (plans_key(state, "Escape") || back_to_the_wall(state))
        return true;
    else if (const auto& nothing = desk::command(desk::CommandId::select_nothing);
             nothing.hindrance(state.session).empty())
        nothing.run(state.session);
    return true;
}

}  // namespace

std::span<const Action> all_actions() {
    return kActions;
}

const Action& action(ActionId id) {
    return kActions[static_cast<std::size_t>(id)];
}

namespace {

/// Keys that a text field does something with itself.
bool is_for_text(std::string_view key) {
    constexpr std::string_view kOwn[] = {"Ctrl+A",     "Ctrl+C",      "Ctrl+V",        "Ctrl+X",
                                         "Ctrl+Y",     "Ctrl+Z",      "Ctrl+Left",     "Ctrl+Right",
                                         "Ctrl+Home",  "Ctrl+End",    "Ctrl+Up",       "Ctrl+Down",
                                         "Ctrl+Enter", "Ctrl+Delete", "Ctrl+Backspace"};
    return !key.starts_with("Ctrl+") || std::ranges::find(kOwn, key) != std::end(kOwn);
}

/// Keys that follow each other closely make one step, others make several.
void end_burst_after_rest(State& state) {
    constexpr double kRest = 1;  // s
    const double now = ImGui::GetCurrentContext() == nullptr ? 0 : ImGui::GetTime();
    if (now - state.last_key > kRest)
        state.session.end_burst();
    state.last_key = now;
}

bool do_key(State& state, std::string_view key) {
    if (key == "F1")
        key = action(ActionId::keys).key;
    const auto* meant = std::ranges::find(kActions, key, &Action::key);
    if (meant != std::end(kActions)) {
        meant->run(state);
        return true;
    }
    const desk::Command* command = desk::command_for_key(key);
    if (command != nullptr)
        command->run(state.session);
    return command != nullptr;
}

}  // namespace

bool press_key(State& state, std::string_view key) {
    if (key.empty())
        return false;
    if (is_text_typed()) {
        // What is being typed is taken in first, in the frame that follows.
        if (!is_for_text(key))
            later(state, key);
        return false;
    }
    if (key == "Escape")
        return escape(state);
    if (!std::holds_alternative<std::monostate>(state.dialog) || state.popups > 0)
        return false;
    end_burst_after_rest(state);
    // A hand that drags keeps the wall to itself.
    if (is_board_hand_busy(state) && key == action(ActionId::turn_blank).key)
        turn_blank(state);
    return is_hand_busy(state) || press_layout_key(state, key) || plans_key(state, key) ||
           bench_key(state, key) || hang_key(state, key) || do_key(state, key);
}

bool is_hand_busy(const State& state) {
    return state.pointer.is_busy() || state.mount_tool.is_busy() || is_board_hand_busy(state);
}

void let_go(State& state) {
    state.pointer.cancel(state.session);
    state.mount_tool.cancel(state.session);
    let_go_of_boards(state);
}

void later(State& state, std::string_view key) {
    ImGui::ClearActiveID();
    state.key_later = key;
}

void do_what_waited(State& state) {
    const std::string key = std::exchange(state.key_later, {});
    if (!key.empty() && std::holds_alternative<std::monostate>(state.dialog))
        do_key(state, key);
}

}  // namespace wallwright::app
