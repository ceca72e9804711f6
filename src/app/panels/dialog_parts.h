// What dialogs are made of: their width, their title, their buttons at the right.
#pragma once

#include "app/widgets.h"

#include <optional>
#include <span>

namespace wallwright::app {

/// The dialog's title, with room below it.
void dialog_title(Ui& ui, const std::string& words);
/// What keeps the dialog from doing its work, in the colour of a stop; nothing when empty.
void dialog_problem(Ui& ui, const std::string& problem);

struct DialogButton {
    const char* name;  ///< For the probe: "start/begin".
    std::string words;
    bool enabled = true;
};

/// In one line at the right end, the last one being the main one unless said otherwise. Gives the
/// index of the pressed.
std::optional<std::size_t> dialog_buttons(Ui& ui, std::span<const DialogButton> buttons,
                                          ButtonLook last = ButtonLook::main);

/// px that a button with these words needs.
float button_width(const Ui& ui, const std::string& words);

}  // namespace wallwright::app
