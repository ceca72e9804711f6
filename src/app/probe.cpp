#include "app/probe.h"

#include <imgui_internal.h>

namespace wallwright::app {

namespace {

ImVec4 clip_of_window() {
    const ImRect& clip = ImGui::GetCurrentWindowRead()->ClipRect;
    return {clip.Min.x, clip.Min.y, clip.Max.x, clip.Max.y};
}

}  // namespace

void Probe::note(const std::string& name, bool enabled) {
    items_[name] = {ImGui::GetItemRectMin(), ImGui::GetItemRectMax(), clip_of_window(), enabled};
}

void Probe::note_box(const std::string& name, ImVec2 min, ImVec2 max) {
    items_[name] = {min, max, clip_of_window(), true};
}

}  // namespace wallwright::app
