#include "app/actions.h"
#include "app/panels/dialog_parts.h"
#include "app/panels/panels.h"
#include "app/scoped.h"

#include <fmt/format.h>
#include <fmt/ranges.h>
#include <imgui_stdlib.h>

#include <algorithm>

namespace wallwright::app {

namespace {

namespace fs = std::filesystem;
using For = FileDialog::For;

bool writes(For what) {
    return what != For::open && what != For::import_frames && what != For::picture;
}

void enter(FileDialog& dialog, const fs::path& folder) {
    dialog.folder = folder.lexically_normal();
    dialog.problem.clear();
    dialog.asked_to_replace = false;
}

void name_it(FileDialog& dialog, const std::string& name) {
    dialog.name = name;
    dialog.problem.clear();
    dialog.asked_to_replace = false;
}

/// Its parts side by side, over as many lines as they need; each leads to the folder it ends.
void folder_parts(Ui& ui, FileDialog& dialog) {
    const float right = ImGui::GetCursorPosX() + ImGui::GetContentRegionAvail().x;
    const ImGuiStyle& style = ImGui::GetStyle();
    std::optional<fs::path> wanted;
    fs::path so_far;
    int index = 0;
    for (const fs::path& part : dialog.folder) {
        so_far /= part;
        if (part.empty())
            continue;
        const std::string name = fmt::format("file-dialog/part-{}", index);
        const float width = button_width(ui, part.string());
        if (index > 0) {
            ImGui::SameLine();
            if (ImGui::GetCursorPosX() + width > right)
                ImGui::NewLine();
        }
        if (button(ui, name.c_str(), part.string().c_str(), so_far.string(), ButtonLook::plain,
                   std::min(width, right - style.ItemSpacing.x) / ui.scale))
            wanted = so_far;
        ++index;
    }
    if (wanted)
        enter(dialog, *wanted);
}

bool line(Ui& ui, const std::string& words, const std::string& name, bool chosen) {
    const ScopedId id(name.c_str());
    const bool pressed = ImGui::Selectable(
        words.c_str(), chosen,
        ImGuiSelectableFlags_AllowDoubleClick | ImGuiSelectableFlags_DontClosePopups);
    ui.probe.note(name);
    return pressed;
}

/// True when a file was chosen by a double click.
bool lines(Ui& ui, FileDialog& dialog) {
    const FolderList& list = dialog.list;
    std::optional<fs::path> into;
    for (std::size_t i = 0; i < list.folders.size(); ++i)
        if (line(ui, list.folders[i] + "/", fmt::format("file-dialog/folder-{}", i), false) &&
            ImGui::IsMouseDoubleClicked(ImGuiMouseButton_Left))
            into = dialog.folder / list.folders[i];
    bool chosen = false;
    for (std::size_t i = 0; i < list.files.size(); ++i)
        if (line(ui, list.files[i], fmt::format("file-dialog/file-{}", i),
                 list.files[i] == dialog.name)) {
            if (list.files[i] != dialog.name)
                name_it(dialog, list.files[i]);
            chosen = ImGui::IsMouseDoubleClicked(ImGuiMouseButton_Left);
        }
    if (into)
        enter(dialog, *into);
    return chosen;
}

bool folder_list(Ui& ui, FileDialog& dialog) {
    if (dialog.list.folder != dialog.folder)
        dialog.list = list_folder(dialog.folder, dialog.endings);
    const float most = ImGui::GetIO().DisplaySize.y - ui.px(32 + 2 * 18 + 220);
    bool chosen = false;
    const ScopedColour ground(ImGuiCol_ChildBg, ui.theme().field);
    if (ImGui::BeginChild("list", {0, std::clamp(ui.px(300), 1.F, std::max(1.F, most))}, false,
                          ImGuiWindowFlags_AlwaysUseWindowPadding)) {
        if (!dialog.list.problem.empty())
            dialog_problem(ui, dialog.list.problem);
        else if (dialog.list.folders.empty() && dialog.list.files.empty())
            hint(ui, fmt::format("Nothing here that ends in {}.", fmt::join(dialog.endings, ", ")));
        chosen = lines(ui, dialog);
    }
    ImGui::EndChild();
    return chosen;
}

/// True when Enter was pressed in it.
bool name_field(Ui& ui, FileDialog& dialog) {
    if (dialog.wants_keyboard)
        ImGui::SetKeyboardFocusHere();
    ImGui::SetNextItemWidth(-1);
    std::string name = dialog.name;
    const bool entered = ImGui::InputTextWithHint(
        "##name", "A name", &name,
        ImGuiInputTextFlags_EnterReturnsTrue | ImGuiInputTextFlags_AutoSelectAll);
    ui.probe.note("file-dialog/name");
    if (ImGui::IsItemActive())
        dialog.wants_keyboard = false;
    if (name != dialog.name)
        name_it(dialog, name);
    if (entered)
        dialog.wants_keyboard = true;
    return entered;
}

/// A name without one of the endings gets the first, unless there is just such a file to be read.
fs::path with_ending(const FileDialog& dialog, fs::path file) {
    std::error_code error;
    const bool as_it_is = !writes(dialog.what) && fs::is_regular_file(file, error);
    if (!as_it_is && !has_ending(file, dialog.endings))
        file += dialog.endings.front();
    return file;
}

bool must_ask(FileDialog& dialog, const fs::path& file) {
    std::error_code error;
    if (!writes(dialog.what) || dialog.asked_to_replace || !fs::exists(file, error))
        return false;
    dialog.asked_to_replace = true;
    dialog.problem = fmt::format("There is a file {} already. Replace it, or type another name.",
                                 file.filename().string());
    return true;
}

void confirm(State& state, FileDialog& dialog) {
    if (dialog.name.empty()) {
        dialog.problem = writes(dialog.what) ? "Type a name for the file."
                                             : "Choose a file from the list, or type its name.";
        return;
    }
    const fs::path typed = (dialog.folder / dialog.name).lexically_normal();
    std::error_code error;
    if (fs::is_directory(typed, error)) {
        enter(dialog, typed);
        return name_it(dialog, "");
    }
    const fs::path file = with_ending(dialog, typed);
    if (must_ask(dialog, file))
        return;
    const FileDialog chosen = dialog;
    if (const Outcome done = file_chosen(state, chosen, file); !done)
        dialog.problem = to_text(done.error());
}

}  // namespace

void file_dialog(Ui& ui, State& state, FileDialog& dialog) {
    dialog_title(ui, dialog.title);
    folder_parts(ui, dialog);
    const bool double_clicked = folder_list(ui, dialog);
    const bool entered = name_field(ui, dialog);
    dialog_problem(ui, dialog.problem);
    const DialogButton buttons[] = {
        {"file-dialog/cancel", "Cancel"},
        {"file-dialog/do", dialog.asked_to_replace ? "Replace" : dialog.action}};
    const auto pressed = dialog_buttons(ui, buttons);
    if (pressed == 0U)
        close_dialog(state);
    else if (pressed == 1U || entered || double_clicked)
        confirm(state, dialog);
}

}  // namespace wallwright::app
