#include "app/bench/boards.h"
#include "app/hang/hang_parts.h"
#include "app/layouts.h"
#include "app/panels/panels.h"
#include "app/plans.h"
#include "app/scoped.h"

#include <algorithm>

namespace wallwright::app {

namespace {

constexpr float kColumnWidth = 330;  ///< px at a scale of 1.
/// A part of the window that does not move, with nothing of its own around it.
class Part {
  public:
    Part(const char* name, ImVec2 at, ImVec2 size, ImU32 ground, ImGuiWindowFlags flags = 0) {
        ImGui::SetNextWindowPos(at);
        ImGui::SetNextWindowSize(size);
        ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0, 0});
        ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, 0);
        ImGui::PushStyleVar(ImGuiStyleVar_WindowRounding, 0);
        ImGui::PushStyleColor(ImGuiCol_WindowBg, ground);
        ImGui::Begin(name, nullptr,
                     flags | keys_for_fields() | ImGuiWindowFlags_NoTitleBar |
                         ImGuiWindowFlags_NoResize | ImGuiWindowFlags_NoMove |
                         ImGuiWindowFlags_NoCollapse | ImGuiWindowFlags_NoSavedSettings |
                         ImGuiWindowFlags_NoBringToFrontOnFocus);
        ImGui::PopStyleColor();
        ImGui::PopStyleVar(3);
    }
    Part(const Part&) = delete;
    Part& operator=(const Part&) = delete;
    ~Part() { ImGui::End(); }
};

constexpr ImGuiWindowFlags kStill =
    ImGuiWindowFlags_NoScrollbar | ImGuiWindowFlags_NoScrollWithMouse;

/// What is worked out in the background goes on with what there is now.
void follow(Ui& ui, State& state) {
    follow_plans(ui, state);
    follow_boards(ui, state);
    follow_pages(ui, state);
    if (is_wall_hidden(state))
        state.day.follow(state.session);
}

/// What the step is done on.
void middle(Ui& ui, State& state) {
    if (state.step == desk::Step::mounts)
        bench(ui, state);
    else if (state.step == desk::Step::hang)
        hang_views(ui, state);
    else
        canvas(ui, state);
}

}  // namespace

void parts(Ui& ui, State& state) {
    const ImVec2 size = ImGui::GetIO().DisplaySize;
    const float top = ui.px(kTopBarHeight);
    const float foot = ui.px(kStatusBarHeight);
    const float column_width = std::min(ui.px(kColumnWidth), size.x / 2);
    const float left = size.x - column_width;
    keep_layouts(state);
    const float strip = layouts_height(ui, state);
    follow(ui, state);
    const float stages = stage_strip_height(ui, state);
    {
        const Part part("top", {0, 0}, {size.x, top}, ui.theme().panel, kStill);
        top_bar(ui, state);
    }
    // Before the wall: a number under edit is taken in before a press there selects something else.
    {
        const Part part("column", {left, top}, {column_width, size.y - top}, ui.theme().panel);
        column(ui, state);
        ImGui::GetWindowDrawList()->AddLine({left, top}, {left, size.y}, ui.theme().line);
    }
    {
        const Part part("wall", {0, top}, {left, size.y - top - foot - strip - stages},
                        ui.theme().desk, kStill);
        middle(ui, state);
    }
    if (stages > 0) {
        const Part part("stages", {0, size.y - foot - strip - stages}, {left, stages},
                        ui.theme().panel, kStill);
        stage_strip(ui, state);
    }
    if (strip > 0) {
        const Part part("layouts", {0, size.y - foot - strip}, {left, strip}, ui.theme().panel,
                        kStill);
        layouts_strip(ui, state);
    }
    {
        const Part part("foot", {0, size.y - foot}, {left, foot}, ui.theme().panel, kStill);
        status_bar(ui, state);
    }
    dialogs(ui, state);
}

}  // namespace wallwright::app
