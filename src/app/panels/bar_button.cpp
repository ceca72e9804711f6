#include "app/panels/bar_button.h"

#include "app/panels/panels.h"
#include "app/row.h"
#include "app/widgets.h"

#include <algorithm>

namespace wallwright::app {

namespace {

constexpr float kHeight = 28;  ///< px at a scale of 1, as are these.
constexpr float kPadding = 9;
constexpr float kGap = 4;

ImFont* font_of(const Ui& ui, const BarButton& button) {
    return button.chosen ? ui.fonts.bold : ui.fonts.body;
}

float width_of(const Ui& ui, const BarButton& button) {
    return width_in(font_of(ui, button), button.words) + ui.px(2 * kPadding);
}

void push_colours(const Ui& ui, const BarButton& button) {
    const Theme& theme = ui.theme();
    const ImU32 ground = button.chosen ? theme.accent : theme.panel;
    const ImU32 under_pointer = button.chosen ? theme.accent : theme.field;
    ImGui::PushStyleColor(ImGuiCol_Button, ground);
    ImGui::PushStyleColor(ImGuiCol_ButtonHovered, button.enabled ? under_pointer : ground);
    ImGui::PushStyleColor(ImGuiCol_ButtonActive, button.enabled ? under_pointer : ground);
    ImGui::PushStyleColor(ImGuiCol_Text, button.chosen    ? theme.on_accent
                                         : button.enabled ? theme.text
                                                          : theme.quiet_text);
}

/// What cannot be pressed now still tells why.
bool show(Ui& ui, const BarButton& button) {
    push_colours(ui, button);
    ImGui::PushFont(font_of(ui, button));
    ImGui::PushStyleVar(ImGuiStyleVar_FramePadding, {0, 0});
    ImGui::PushStyleVar(ImGuiStyleVar_FrameBorderSize, 0);
    ImGui::PushID(button.name.c_str());
    const bool pressed =
        ImGui::Button(button.words.c_str(), {width_of(ui, button), ui.px(kHeight)});
    ui.probe.note(button.name, button.enabled);
    ImGui::PopID();
    ImGui::PopStyleVar(2);
    ImGui::PopFont();
    ImGui::PopStyleColor(4);
    tip_below(ui, button.why);
    return pressed && button.enabled;
}

}  // namespace

float width_of(const Ui& ui, const std::vector<BarButton>& buttons) {
    float width = buttons.empty() ? 0 : -ui.px(kGap);
    for (const BarButton& button : buttons)
        width += ui.px(kGap) + width_of(ui, button);
    return width;
}

void show_buttons(Ui& ui, State& state, const std::vector<BarButton>& buttons, float x, float top) {
    for (const BarButton& button : buttons) {
        ImGui::SetCursorPos({x, top + ui.px((kTopBarHeight - kHeight) / 2)});
        if (show(ui, button))
            button.press(state);
        x += width_of(ui, button) + ui.px(kGap);
    }
}

}  // namespace wallwright::app
