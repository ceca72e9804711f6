#include "app/scoped.h"
#include "app/widgets.h"

#include <fmt/format.h>

#include <cfloat>

namespace wallwright::app {

namespace {

/// The probe's name for a command's button: "command/even-the-gaps".
std::string probe_name(const desk::Command& command) {
    std::string name = fmt::format("command/{}", command.name);
    for (char& c : name)
        if (c == ' ')
            c = '-';
        else if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return name;
}

std::string why_of(const desk::Command& command, const std::string& hindrance) {
    std::string why(command.help);
    if (!command.key.empty())
        why += fmt::format("\nKey: {}", command.key);
    if (!hindrance.empty())
        why += fmt::format("\nNot now: {}.", hindrance);
    return why;
}

bool main_button(const Ui& ui, const char* words, ImVec2 size) {
    const Theme& theme = ui.theme();
    const ScopedColour ground(ImGuiCol_Button, theme.accent);
    const ScopedColour under_pointer(ImGuiCol_ButtonHovered, theme.accent);
    const ScopedColour pressed(ImGuiCol_ButtonActive, theme.accent);
    const ScopedColour ink(ImGuiCol_Text, theme.on_accent);
    return ImGui::Button(words, size);
}

void show(Ui& ui, desk::Session& session, const desk::Command& command, const std::string& words,
          ButtonLook look, float width) {
    const std::string hindrance = command.hindrance(session);
    if (button(ui, probe_name(command).c_str(), words.c_str(), why_of(command, hindrance), look,
               width, hindrance.empty()))
        command.run(session);
}

}  // namespace

bool button(Ui& ui, const char* name, const char* words, const std::string& why, ButtonLook look,
            float width, bool enabled) {
    const ImVec2 size{width < 0 ? -FLT_MIN : ui.px(width), 0};
    const ScopedId id(name);
    bool pressed = false;
    {
        const ScopedDisabled disabled(!enabled);
        pressed =
            look == ButtonLook::main ? main_button(ui, words, size) : ImGui::Button(words, size);
    }
    ui.probe.note(name, enabled);
    tip(ui, why);
    return pressed;
}

void command_button(Ui& ui, desk::Session& session, desk::CommandId id, ButtonLook look,
                    float width) {
    const desk::Command& command = desk::command(id);
    show(ui, session, command, std::string(command.name), look, width);
}

void ButtonFlow::next(std::string_view words) {
    const bool is_first = first_;
    first_ = false;
    if (is_first)
        return;
    const ImGuiStyle& style = ImGui::GetStyle();
    const float width =
        ImGui::CalcTextSize(words.data(), words.data() + words.size()).x + 2 * style.FramePadding.x;
    const float right = ImGui::GetWindowPos().x + ImGui::GetWindowContentRegionMax().x;
    if (ImGui::GetItemRectMax().x + style.ItemSpacing.x + width <= right)
        ImGui::SameLine();
}

void command_buttons(Ui& ui, desk::Session& session, std::span<const desk::CommandId> ids,
                     std::string_view said) {
    ButtonFlow flow;
    for (const desk::CommandId id : ids) {
        const desk::Command& command = desk::command(id);
        std::string_view name = command.name;
        if (name.starts_with(said))
            name.remove_prefix(said.size());
        const std::string words = capital(std::string(name));
        flow.next(words);
        show(ui, session, command, words, ButtonLook::plain, 0);
    }
}

}  // namespace wallwright::app
