#include "app/panels/file_menu.h"

#include "app/actions.h"
#include "app/panels/panels.h"
#include "app/widgets.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

constexpr const char* kMenu = "file menu";

void entry(Ui& ui, State& state, const char* name, ActionId id) {
    const Action& deed = action(id);
    const bool pressed = ImGui::MenuItem(deed.name.data(), deed.key.data());
    ui.probe.note(name);
    tip(ui, std::string(deed.help));
    if (pressed)
        deed.run(state);
}

/// The folder's name tells walls of one name apart.
std::optional<std::filesystem::path> recent_files(Ui& ui, const State& state) {
    std::optional<std::filesystem::path> chosen;
    const std::vector<std::filesystem::path>& files = state.preferences.recent;
    for (std::size_t i = 0; i < files.size(); ++i) {
        ImGui::PushID(static_cast<int>(i));
        if (ImGui::MenuItem(files[i].filename().string().c_str(),
                            files[i].parent_path().filename().string().c_str()))
            chosen = files[i];
        ui.probe.note(fmt::format("file/recent-{}", i));
        tip(ui, files[i].string());
        ImGui::PopID();
    }
    return chosen;
}

void open_again(Ui& ui, State& state) {
    const bool open = ImGui::BeginMenu("Open again", !state.preferences.recent.empty());
    ui.probe.note("file/recent", !state.preferences.recent.empty());
    if (!open)
        return;
    const auto chosen = recent_files(ui, state);
    ImGui::EndMenu();
    if (chosen)
        want_open_recent(state, *chosen);
}

void entries(Ui& ui, State& state) {
    entry(ui, state, "file/new", ActionId::new_wall);
    entry(ui, state, "file/open", ActionId::open);
    open_again(ui, state);
    entry(ui, state, "file/demo", ActionId::demo);
    ImGui::Separator();
    entry(ui, state, "file/save", ActionId::save);
    entry(ui, state, "file/save-as", ActionId::save_as);
    ImGui::Separator();
    entry(ui, state, "file/import", ActionId::import_frames);
    entry(ui, state, "file/sheets", ActionId::sheets);
    entry(ui, state, "file/elevation", ActionId::elevation);
    entry(ui, state, "file/marks", ActionId::marks);
    entry(ui, state, "file/card-plan", ActionId::card_plan);
    entry(ui, state, "file/cutting-sheets", ActionId::cutting_sheets);
    ImGui::Separator();
    entry(ui, state, "file/settings", ActionId::settings);
    entry(ui, state, "file/keys", ActionId::keys);
    ImGui::Separator();
    entry(ui, state, "file/quit", ActionId::quit);
}

}  // namespace

void open_file_menu() {
    ImGui::OpenPopup(kMenu);
}

void file_menu(Ui& ui, State& state, float left) {
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {ui.px(10), ui.px(10)});
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {ui.px(12), ui.px(8)});
    ImGui::SetNextWindowPos({ImGui::GetWindowPos().x + left, ui.px(kTopBarHeight)},
                            ImGuiCond_Appearing);
    if (ImGui::BeginPopup(kMenu)) {
        entries(ui, state);
        ImGui::EndPopup();
    }
    ImGui::PopStyleVar(2);
}

}  // namespace wallwright::app
