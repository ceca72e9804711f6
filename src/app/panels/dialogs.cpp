#include "app/actions.h"
#include "app/panels/panels.h"

#include <imgui_internal.h>

#include <algorithm>

namespace wallwright::app {

namespace {

constexpr const char* kPopup = "dialog";

/// px at a scale of 1.
struct WidthOf {
    float operator()(const std::monostate&) const { return 0; }
    float operator()(const StartDialog&) const { return 780; }
    float operator()(const FileDialog&) const { return 640; }
    float operator()(const KeysDialog&) const { return 860; }
    float operator()(const SettingsDialog&) const { return 400; }
    float operator()(const UnsavedDialog&) const { return 460; }
    float operator()(const RecoveryDialog&) const { return 540; }
};

struct Show {
    Ui& ui;
    State& state;
    void operator()(const std::monostate&) const {}
    void operator()(StartDialog& dialog) const { start_dialog(ui, state, dialog); }
    void operator()(FileDialog& dialog) const { file_dialog(ui, state, dialog); }
    void operator()(KeysDialog&) const { keys_dialog(ui, state); }
    void operator()(SettingsDialog&) const { settings_dialog(ui, state); }
    void operator()(UnsavedDialog& dialog) const { unsaved_dialog(ui, state, dialog); }
    void operator()(RecoveryDialog& dialog) const { recovery_dialog(ui, state, dialog); }
};

bool is_open(const State& state) {
    return !std::holds_alternative<std::monostate>(state.dialog);
}

/// In the middle, as wide as wanted or as there is room, as high as its content or as there is
/// room.
void place_dialog(const Ui& ui, const State& state) {
    const ImVec2 screen = ImGui::GetIO().DisplaySize;
    const float edge = ui.px(16);
    const float width =
        std::min(ui.px(std::visit(WidthOf{}, state.dialog)), std::max(1.F, screen.x - 2 * edge));
    ImGui::SetNextWindowPos({screen.x / 2, screen.y / 2}, ImGuiCond_Always, {0.5F, 0.5F});
    ImGui::SetNextWindowSizeConstraints({width, 0}, {width, std::max(1.F, screen.y - 2 * edge)});
}

/// A list that is dropped down goes first. A field that is typed in takes Escape for itself, but
/// for the name of a file, which is typed in all the time.
void on_escape(State& state) {
    if (!ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_Escape), false))
        return;
    if (state.popups > 1)  // It has closed the list.
        return;
    if (!ImGui::GetIO().WantTextInput || std::holds_alternative<FileDialog>(state.dialog))
        close_dialog(state);
}

void show_dialog(Ui& ui, State& state) {
    if (!is_open(state)) {
        if (ImGui::IsPopupOpen(kPopup))
            ImGui::ClosePopupToLevel(0, true);
        return;
    }
    if (!ImGui::IsPopupOpen(kPopup))
        ImGui::OpenPopup(kPopup);
    place_dialog(ui, state);
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {ui.px(20), ui.px(18)});
    const bool shown = ImGui::BeginPopupModal(
        kPopup, nullptr,
        ImGuiWindowFlags_NoTitleBar | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings |
            ImGuiWindowFlags_AlwaysAutoResize);
    ImGui::PopStyleVar();
    if (!shown)
        return;
    on_escape(state);
    std::visit(Show{ui, state}, state.dialog);
    if (!is_open(state))
        ImGui::CloseCurrentPopup();
    ImGui::EndPopup();
}

}  // namespace

void dialogs(Ui& ui, State& state) {
    show_dialog(ui, state);
    state.popups = ImGui::GetCurrentContext()->OpenPopupStack.Size;
}

}  // namespace wallwright::app
