#include "app/text_field.h"

#include <fmt/format.h>
#include <imgui_stdlib.h>

#include <utility>

namespace wallwright::app {

namespace {

bool is_pressed(ImGuiKey key) {
    return ImGui::IsKeyPressed(ImGui::GetKeyIndex(key), false);
}

bool enter_is_pressed() {
    return is_pressed(ImGuiKey_Enter) || is_pressed(ImGuiKey_KeyPadEnter);
}

void draw_at_rest(const Ui& ui, const FieldWords& words) {
    if (words.shown.empty())
        draw_at_right(words.empty, ui.theme().quiet_text);
    else
        draw_at_right(words.shown, ui.theme().text);
}

/// Remembers what is typed; gives the words in the frame in which the keyboard went away. ImGui
/// itself does not tell when another item took it, so that is seen from the frame before.
std::optional<std::string> follow(Ui& ui, ImGuiID id, const std::string& text,
                                  const std::string& shown) {
    if (ImGui::IsItemActive()) {
        TextEdit& edit = ui.memory.edits.open(id);
        edit.text = text;
        edit.active = true;
        return std::nullopt;
    }
    TextEdit* edit = ui.memory.edits.find(id);
    if (edit == nullptr || !edit->active)
        return std::nullopt;
    edit->active = false;
    edit->text = text;
    if (is_pressed(ImGuiKey_Escape) || text == shown) {
        ui.memory.edits.close(id);
        return std::nullopt;
    }
    return text;
}

}  // namespace

std::optional<std::string> text_field(Ui& ui, const FieldWords& words, float width) {
    const ImGuiID id = ImGui::GetID(words.name);
    TextEdit* edit = ui.memory.edits.find(id);
    const bool at_rest = edit == nullptr;
    std::string text = at_rest ? words.shown : edit->text;
    if (std::exchange(ui.memory.focus_next_field, false))
        ImGui::SetKeyboardFocusHere();
    if (!at_rest && edit->refocus) {
        edit->refocus = false;
        ImGui::SetKeyboardFocusHere();
    }
    ImGui::SetNextItemWidth(width);
    {
        const ScopedColour ink(ImGuiCol_Text, at_rest ? IM_COL32_BLACK_TRANS : ui.theme().text);
        ImGui::InputText(fmt::format("##{}", words.name).c_str(), &text,
                         ImGuiInputTextFlags_AutoSelectAll);
    }
    ui.probe.note(words.name);
    if (at_rest)
        draw_at_rest(ui, words);
    return follow(ui, id, text, words.shown);
}

void close_field(Ui& ui, const char* name) {
    ui.memory.edits.close(ImGui::GetID(name));
}

void keep_field(Ui& ui, const char* name, const Problem& problem) {
    TextEdit& edit = ui.memory.edits.open(ImGui::GetID(name));
    edit.reason = to_text({"", problem.what, problem.remedy, ""});
    edit.refocus = enter_is_pressed();
}

void show_reason(Ui& ui, const char* name) {
    const TextEdit* edit = ui.memory.edits.find(ImGui::GetID(name));
    if (edit == nullptr || edit->reason.empty())
        return;
    const ScopedColour ink(ImGuiCol_Text, ui.theme().stop);
    const ScopedFont small(ui.fonts.small);
    const ScopedWrap wrap;
    ImGui::TextUnformatted(edit->reason.c_str());
    ui.probe.note(fmt::format("{}/reason", name));
}

}  // namespace wallwright::app
