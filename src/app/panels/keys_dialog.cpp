#include "app/actions.h"
#include "app/panels/dialog_parts.h"
#include "app/panels/panels.h"

#include <string>
#include <vector>

namespace wallwright::app {

namespace {

struct KeyLine {
    std::string_view key;
    std::string_view name;
    std::string_view help;
};

/// What the hand does on the wall itself.
constexpr KeyLine kOnTheWall[] = {
    {"Click", "Select", "With Shift: adds to what is selected, or takes it out."},
    {"Drag", "Move", "A piece from the floor hangs where it is let go; below the floor it waits."},
    {"Drag + Shift", "Keep level or plumb", "The piece moves along one line only."},
    {"Drag + Alt", "Move freely", "Nothing snaps."},
    {"Drag on the wall", "Select in a band", "All that the band touches."},
    {"Wheel", "Zoom", "Larger and smaller about the pointer."},
    {"Shift + wheel", "Move along the wall", "Left and right."},
    {"Space + drag", "Move the view", "So does the middle button."},
    {"Escape", "Put away", "The dialog, else the drag, else the selection."}};

/// Likewise on the mount that lies on the bench.
constexpr KeyLine kOnTheBench[] = {
    {"Drag a window", "Place it by hand", "It rests in the middle, in line, or on whole steps."},
    {"Drag an edge", "Change the overlap", "Between two windows: the bar."},
    {"Double click", "Centre it again", "The window goes by the borders' rule."},
    {"Left, Right", "Go to another mount", "In the order of the row below."},
    {"Up, Down", "Go to another layer", "On the back of a mount with several."}};

template <class Described>
std::vector<KeyLine> with_keys(std::span<const Described> all) {
    std::vector<KeyLine> lines;
    for (const Described& one : all)
        if (!one.key.empty() && one.key != "Escape")
            lines.push_back({one.key, one.name, one.help});
    return lines;
}

void words(std::string_view text) {
    ImGui::TextUnformatted(text.data(), text.data() + text.size());
}

void show_line(Ui& ui, const KeyLine& line) {
    const float key_width = ui.px(112);
    const float left = ImGui::GetCursorPosX();
    ImGui::PushFont(ui.fonts.bold);
    words(line.key);
    ImGui::PopFont();
    ImGui::SameLine();
    ImGui::SetCursorPosX(left + key_width);
    ImGui::BeginGroup();
    words(line.name);
    hint(ui, std::string(line.help));
    ImGui::EndGroup();
}

void show_lines(Ui& ui, const char* title, std::span<const KeyLine> lines) {
    heading(ui, title);
    for (const KeyLine& line : lines)
        show_line(ui, line);
}

void show_table(Ui& ui) {
    ImGui::PushStyleVar(ImGuiStyleVar_CellPadding, {ui.px(12), 0});
    const bool shown = ImGui::BeginTable("keys", 2, ImGuiTableFlags_SizingStretchSame);
    ImGui::PopStyleVar();
    if (!shown)
        return;
    ImGui::TableNextColumn();
    show_lines(ui, "On the wall", kOnTheWall);
    show_lines(ui, "On the bench", kOnTheBench);
    show_lines(ui, "Files and steps", with_keys(all_actions()));
    ImGui::TableNextColumn();
    show_lines(ui, "Pieces", with_keys(desk::all_commands()));
    ImGui::EndTable();
}

}  // namespace

void keys_dialog(Ui& ui, State& state) {
    dialog_title(ui, "Keys");
    // The list scrolls by itself, so that the button stays in sight.
    const float room = ImGui::GetIO().DisplaySize.y - ui.px(32 + 2 * 18 + 100);
    if (ImGui::BeginChild("list", {0, std::max(ui.px(80), std::min(room, ui.px(620)))}))
        show_table(ui);
    ImGui::EndChild();
    const DialogButton buttons[] = {{"keys/close", "Close"}};
    if (dialog_buttons(ui, buttons))
        close_dialog(state);
}

}  // namespace wallwright::app
