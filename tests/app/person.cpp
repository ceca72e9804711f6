#include "person.h"

#include "app/actions.h"
#include "app/panels/panels.h"
#include "edits/room.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

namespace wallwright::app {

namespace {

constexpr const char* kSettings = "XDG_CONFIG_HOME";

void draw(Ui& ui, State& state) {
    ImGui::SetNextWindowPos({0, 0});
    ImGui::SetNextWindowSize(ImGui::GetIO().DisplaySize);
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0, 0});
    ImGui::Begin("root", nullptr,
                 ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove |
                     ImGuiWindowFlags_NoBringToFrontOnFocus);
    ImGui::PopStyleVar();
    top_bar(ui, state);
    status_bar(ui, state);
    dialogs(ui, state);
    ImGui::End();
}

bool begins(const std::string& name, const std::string& prefix) {
    return name.compare(0, prefix.size(), prefix) == 0;
}

/// What can be seen of it.
ImVec4 seen(const ItemBox& box) {
    return {std::max(box.min.x, box.clip.x), std::max(box.min.y, box.clip.y),
            std::min(box.max.x, box.clip.z), std::min(box.max.y, box.clip.w)};
}

bool cover(const ItemBox& one, const ItemBox& other) {
    const ImVec4 a = seen(one);
    const ImVec4 b = seen(other);
    return std::min(a.z, b.z) > std::max(a.x, b.x) && std::min(a.w, b.w) > std::max(a.y, b.y);
}

}  // namespace

OwnSettings::OwnSettings(const std::string& folder) {
    if (const char* before = std::getenv(kSettings))
        before_ = before;
    setenv(kSettings, folder.c_str(), 1);
}

OwnSettings::~OwnSettings() {
    if (before_)
        setenv(kSettings, before_->c_str(), 1);
    else
        unsetenv(kSettings);
}

Person::Person(wall::Project project, ImVec2 size, float scale)
    : settings(config.path()),
      state{desk::Session(std::move(project)), desk::Preferences{}},
      window(size, scale) {
    state.last_folder = folder.path();
    window.on_key = [this](std::string_view key) { press_key(state, key); };
    window.frame([this](Ui& ui) { draw(ui, state); });
    window.settle();
}

void Person::work() {
    state.session.apply("Rename the wall",
                        edits::change_project(state.session.kept(), [](wall::Project& project) {
                            project.title += ", north";
                        }));
    window.settle();
}

std::vector<std::string> Person::overlaps(const std::string& prefix) const {
    std::vector<std::string> names;
    const auto& items = window.ui.probe.items();
    for (auto a = items.begin(); a != items.end(); ++a)
        for (auto b = std::next(a); b != items.end(); ++b)
            if (begins(a->first, prefix) && begins(b->first, prefix) && cover(a->second, b->second))
                names.push_back(fmt::format("{} and {}", a->first, b->first));
    return names;
}

std::vector<std::string> Person::cut_off(const std::string& prefix) const {
    std::vector<std::string> names;
    for (const auto& [name, box] : window.ui.probe.items())
        if (begins(name, prefix) && !window.is_in_sight(name))
            names.push_back(name);
    return names;
}

}  // namespace wallwright::app
