#include "app/actions.h"
#include "app/panels/dialog_parts.h"
#include "app/panels/panels.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

const char* next_words(UnsavedDialog::Then then) {
    switch (then) {
        case UnsavedDialog::Then::quit:
            return "before you leave";
        case UnsavedDialog::Then::start:
            return "before another is begun";
        case UnsavedDialog::Then::demo:
            return "before the demo wall is shown";
        case UnsavedDialog::Then::open:
        case UnsavedDialog::Then::open_recent:
            break;
    }
    return "before another is opened";
}

}  // namespace

void unsaved_dialog(Ui& ui, State& state, UnsavedDialog& dialog) {
    const std::string& title = state.session.kept().title;
    dialog_title(ui, fmt::format("Save \"{}\" {}?", title.empty() ? "this wall" : title,
                                 next_words(dialog.then)));
    ImGui::TextWrapped("%s",
                       "What you did since it was last saved is in no file yet. Without "
                       "saving it is lost.");
    const DialogButton buttons[] = {
        {"unsaved/cancel", "Cancel"}, {"unsaved/give-up", "Don't save"}, {"unsaved/save", "Save"}};
    const auto pressed = dialog_buttons(ui, buttons);
    const UnsavedDialog chosen = dialog;
    if (pressed == 0U)
        close_dialog(state);
    else if (pressed == 1U)
        unsaved_given_up(state, chosen);
    else if (pressed == 2U)
        save_first(state, chosen);
}

}  // namespace wallwright::app
