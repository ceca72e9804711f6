#include "app/actions.h"
#include "app/panels/dialog_parts.h"
#include "app/panels/panels.h"

#include <fmt/chrono.h>
#include <fmt/format.h>

#include <chrono>

namespace wallwright::app {

namespace {

/// By the clock of this place; empty when the file does not tell.
std::string time_of(const std::filesystem::path& file) {
    std::error_code error;
    const auto time = std::filesystem::last_write_time(file, error);
    if (error)
        return "";
    const auto system = std::chrono::time_point_cast<std::chrono::system_clock::duration>(
        std::chrono::file_clock::to_sys(time));
    return fmt::format("{:%Y-%m-%d %H:%M}",
                       fmt::localtime(std::chrono::system_clock::to_time_t(system)));
}

void show_found(const desk::Recovery::Found& found) {
    const std::string& title = found.project.title;
    ImGui::TextWrapped("%s", title.empty() ? "A wall without a title" : title.c_str());
}

std::string details(const desk::Recovery::Found& found) {
    const std::string where = found.original.empty()
                                  ? "in no file yet"
                                  : fmt::format("of {}", found.original.filename().string());
    const std::string when = time_of(found.file);
    return when.empty() ? where : fmt::format("{}, {}", when, where);
}

enum class Answer { none, bring_back, throw_away };

Answer ask(Ui& ui, const desk::Recovery::Found& found, std::size_t index) {
    ImGui::Separator();
    ImGui::PushFont(ui.fonts.bold);
    show_found(found);
    ImGui::PopFont();
    hint(ui, details(found));
    const std::string back = fmt::format("recovery/bring-back-{}", index);
    const std::string away = fmt::format("recovery/throw-away-{}", index);
    const DialogButton buttons[] = {{away.c_str(), "Throw it away"},
                                    {back.c_str(), "Bring it back"}};
    const auto pressed = dialog_buttons(ui, buttons);
    return pressed == 0U ? Answer::throw_away : pressed == 1U ? Answer::bring_back : Answer::none;
}

}  // namespace

void recovery_dialog(Ui& ui, State& state, RecoveryDialog& dialog) {
    dialog_title(ui, "Work was left behind");
    ImGui::TextWrapped("%s",
                       "Wallwright ended before this was saved. Bring back what you want to "
                       "go on with; what you leave is offered again next time.");
    ImGui::Dummy({0, ui.px(4)});
    for (std::size_t i = 0; i < dialog.found.size(); ++i) {
        const Answer answer = ask(ui, dialog.found[i], i);
        if (answer == Answer::none)
            continue;
        const desk::Recovery::Found found = dialog.found[i];
        if (answer == Answer::bring_back)
            return bring_back(state, found);
        desk::Recovery::discard(found);
        dialog.found.erase(dialog.found.begin() + static_cast<std::ptrdiff_t>(i));
        break;
    }
    ImGui::Separator();
    const DialogButton buttons[] = {{"recovery/later", "Later"}};
    const bool later = dialog_buttons(ui, buttons, ButtonLook::plain).has_value();
    if (later || dialog.found.empty())
        close_dialog(state);
}

}  // namespace wallwright::app
