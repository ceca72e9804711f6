// Everything that a key or a button can do to the open wall, with its name, its key and what it is
// for, so that menus, tooltips, the key list and the tests say the same.
#pragma once

#include "desk/session.h"
#include "desk/step.h"

#include <span>
#include <string>
#include <string_view>

namespace wallwright::desk {

enum class CommandId {
    undo,
    redo,
    select_all,
    select_nothing,
    select_next,
    select_previous,
    nudge_left,
    nudge_right,
    nudge_up,
    nudge_down,
    nudge_left_far,
    nudge_right_far,
    nudge_up_far,
    nudge_down_far,
    even_gaps,
    centre_group,
    centre_over,
    turn,
    swap,
    pin,
    hang,
    take_down,
    duplicate,
    remove,
    align_left,
    align_centre_x,
    align_right,
    align_bottom,
    align_centre_y,
    align_top,
    distribute_across,
    distribute_up
};

struct Command {
    CommandId id;
    std::string_view name;  ///< "Even the gaps".
    /// "G", "Ctrl+Z", "Shift+Left"; empty for none. One key, one command. Modifiers in the order
    /// Ctrl, Alt, Shift.
    std::string_view key;
    std::string_view help;  ///< One sentence.
    /// Empty when it can be run now, else why not: "Select two pieces first".
    std::string (*hindrance)(const Session&);
    /// A step of the history named for what it did; what hinders it is told as a notice instead.
    void (*run)(Session&);
};

/// Every command once, in the order of CommandId.
std::span<const Command> all_commands();
const Command& command(CommandId id);
/// The command of this key as written above, or null.
const Command* command_for_key(std::string_view key);

}  // namespace wallwright::desk
