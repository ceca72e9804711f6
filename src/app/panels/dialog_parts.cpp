#include "app/panels/dialog_parts.h"

#include "app/row.h"

#include <algorithm>

namespace wallwright::app {

void dialog_title(Ui& ui, const std::string& words) {
    ImGui::PushFont(ui.fonts.title);
    ImGui::TextWrapped("%s", words.c_str());
    ImGui::PopFont();
    ImGui::Dummy({0, ui.px(4)});
}

void dialog_problem(Ui& ui, const std::string& problem) {
    if (problem.empty())
        return;
    ImGui::PushStyleColor(ImGuiCol_Text, ui.theme().stop);
    ImGui::TextWrapped("%s", problem.c_str());
    ImGui::PopStyleColor();
    ui.probe.note("dialog/problem");
}

float button_width(const Ui& ui, const std::string& words) {
    return std::max(width_in(ui.fonts.body, words), width_in(ui.fonts.bold, words)) + ui.px(28);
}

std::optional<std::size_t> dialog_buttons(Ui& ui, std::span<const DialogButton> buttons,
                                          ButtonLook last) {
    const float gap = ImGui::GetStyle().ItemSpacing.x;
    float width = -gap;
    for (const DialogButton& one : buttons)
        width += gap + button_width(ui, one.words);
    ImGui::Dummy({0, ui.px(6)});
    ImGui::SetCursorPosX(ImGui::GetCursorPosX() +
                         std::max(0.F, ImGui::GetContentRegionAvail().x - width));
    std::optional<std::size_t> pressed;
    for (std::size_t i = 0; i < buttons.size(); ++i) {
        const DialogButton& one = buttons[i];
        if (i > 0)
            ImGui::SameLine();
        const ButtonLook look = i + 1 == buttons.size() ? last : ButtonLook::plain;
        if (button(ui, one.name, one.words.c_str(), "", look,
                   button_width(ui, one.words) / ui.scale, one.enabled))
            pressed = i;
    }
    return pressed;
}

}  // namespace wallwright::app
