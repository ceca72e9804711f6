#include "app/panels/panels.h"
#include "app/scoped.h"

#include <algorithm>
#include <utility>

namespace wallwright::app {

namespace {

void step_panel(Ui& ui, State& state) {
    switch (state.step) {
        case desk::Step::room:
            return room_panel(ui, state);
        case desk::Step::pieces:
            return pieces_panel(ui, state);
        case desk::Step::arrange:
            return arrange_panel(ui, state);
        case desk::Step::hang:
            return hang_panel(ui, state);
    }
}

void subject_panel(Ui& ui, State& state) {
    const desk::Selection& selection = state.session.selection;
    if (selection.one_piece())
        piece_panel(ui, state);
    else if (selection.furniture() || selection.fixture())
        thing_panel(ui, state);
    else if (!selection.empty())
        several_panel(ui, state);
    else
        step_panel(ui, state);
}

/// The lower edge of the window pales: there is more below.
void fade_out(const Ui& ui) {
    const ImVec2 from = ImGui::GetWindowPos();
    const ImVec2 to{from.x + ImGui::GetWindowWidth(), from.y + ImGui::GetWindowHeight()};
    const ImU32 panel = ui.theme().panel;
    const ImU32 clear = panel & ~IM_COL32_A_MASK;
    ImGui::GetWindowDrawList()->AddRectFilledMultiColor(
        {from.x, to.y - ui.px(28)}, {to.x - ImGui::GetStyle().ScrollbarSize, to.y}, clear, clear,
        panel, panel);
}

/// Scrolls by itself, so that the findings stay in sight. As high as it was asked for, or as what
/// it holds; gives that, px.
float subject(Ui& ui, State& state, float height) {
    ImGui::BeginChild("subject", {0, height}, false,
                      ImGuiWindowFlags_AlwaysUseWindowPadding | keys_for_fields());
    ui.memory.focus_next_field = std::exchange(state.type_wanted, false);
    subject_panel(ui, state);
    ui.memory.focus_next_field = false;
    const float needed = ImGui::GetCursorPosY() + ImGui::GetStyle().WindowPadding.y;
    if (ImGui::GetScrollY() < ImGui::GetScrollMaxY())
        fade_out(ui);
    ImGui::EndChild();
    return needed;
}

}  // namespace

void column(Ui& ui, State& state) {
    constexpr float kMostShare = 0.66F;
    ImGuiStorage& storage = *ImGui::GetStateStorage();
    const ImGuiID key = ImGui::GetID("height of the subject");
    const float all = ImGui::GetContentRegionAvail().y;
    const float most = all * kMostShare;
    const float height =
        std::clamp(storage.GetFloat(key, most), ui.px(40), std::max(most, ui.px(40)));
    storage.SetFloat(key, subject(ui, state, height));
    ImGui::BeginChild("findings", {0, 0}, false,
                      ImGuiWindowFlags_AlwaysUseWindowPadding | keys_for_fields());
    findings_panel(ui, state);
    ImGui::EndChild();
}

}  // namespace wallwright::app
