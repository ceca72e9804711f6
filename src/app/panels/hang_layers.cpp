#include "app/panels/hang_sections.h"
#include "app/scoped.h"
#include "app/widgets.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using desk::HangLayers;

struct Layer {
    const char* name;
    const char* words;
    bool HangLayers::*on;
    const char* why;
};

constexpr Layer kLayers[] = {
    {"hang/layer/marks", "Marks", &HangLayers::marks,
     "The pencil marks with their numbers. Rest the pointer on one for where it goes."},
    {"hang/layer/fixings", "Fixings", &HangLayers::fixings,
     "Strips, hooks, screws and cords as hidden lines behind the frames."},
    {"hang/layer/loads", "Loads", &HangLayers::loads,
     "On each piece a bar: how much of what its fixings are rated for is in use. The stroke is "
     "the limit that the margin leaves."},
    {"hang/layer/zones", "Cable zones", &HangLayers::zones,
     "Hatched: where cables should be by the chosen practice, not where they are. A cable may lie "
     "anywhere all the same: look with a detector before you drill."},
    {"hang/layer/studs", "Studs", &HangLayers::studs,
     "Where the studs should be by the first one and the distance between them."}};

/// Beside the switch before it where there is room.
void next_switch(float width) {
    const float right = ImGui::GetWindowPos().x + ImGui::GetWindowContentRegionMax().x;
    const float space = ImGui::GetStyle().ItemSpacing.x;
    if (ImGui::GetItemRectMax().x + space + width <= right)
        ImGui::SameLine();
}

}  // namespace

void layers_part(Ui& ui, State& state) {
    heading(ui, "Shown on the wall");
    const bool has_studs = state.session.project().room.studs.has_value();
    for (const Layer& layer : kLayers) {
        if (&layer != kLayers)
            next_switch(ImGui::GetFrameHeight() + ImGui::GetStyle().ItemInnerSpacing.x +
                        ImGui::CalcTextSize(layer.words).x);
        const bool idle = layer.on == &HangLayers::studs && !has_studs;
        {
            const ScopedDisabled disabled(idle);
            ImGui::Checkbox(fmt::format("{}##{}", layer.words, layer.name).c_str(),
                            &(state.layers.*layer.on));
        }
        ui.probe.note(layer.name);
        tip(ui, idle ? "Nobody has said where the studs are. The step Room asks for them, under "
                       "\"Behind the surface\"."
                     : layer.why);
    }
}

}  // namespace wallwright::app
