#include "desk/command.h"

#include "desk/command_functions.h"

#include <algorithm>
#include <array>

namespace wallwright::desk {

namespace {

using edits::Direction;
using edits::Line;

template <auto Hindrance, auto Do>
void run(Session& session) {
    if (std::string why = Hindrance(session); !why.empty())
        session.notice = Notice{false, why + "."};
    else
        Do(session);
}

template <auto Hindrance, auto Do>
constexpr Command made(CommandId id, std::string_view name, std::string_view key,
                       std::string_view help) {
    return {id, name, key, help, Hindrance, run<Hindrance, Do>};
}

template <int Right, int Up, bool Far>
void do_nudge(Session& session) {
    nudge(session, Right, Up, Far);
}

template <Line AtLine>
void do_align(Session& session) {
    align(session, AtLine);
}

template <Direction Along>
void do_distribute(Session& session) {
    distribute(session, Along);
}

constexpr std::string_view kNudgeHelp =
    "Moves what is selected by 1 mm, or 1/16 in when you work in inches.";
constexpr std::string_view kNudgeFarHelp =
    "Moves what is selected by 10 mm, or 1/2 in when you work in inches.";

template <int Right, int Up>
constexpr Command small_nudge(CommandId id, std::string_view name, std::string_view key) {
    return made<hinders_nudge, do_nudge<Right, Up, false>>(id, name, key, kNudgeHelp);
}

template <int Right, int Up>
constexpr Command far_nudge(CommandId id, std::string_view name, std::string_view key) {
    return made<hinders_nudge, do_nudge<Right, Up, true>>(id, name, key, kNudgeFarHelp);
}

template <Line AtLine>
constexpr Command alignment(CommandId id, std::string_view name, std::string_view key,
                            std::string_view help) {
    return made<hinders_align, do_align<AtLine>>(id, name, key, help);
}

using enum CommandId;

constexpr std::array kCommands = {
    made<hinders_undo, do_undo>(undo, "Undo", "Ctrl+Z", "Takes the last step back."),
    made<hinders_redo, do_redo>(redo, "Redo", "Ctrl+Shift+Z",
                                "Takes a step again that was taken back."),
    made<hinders_select, do_select_all>(select_all, "Select all", "Ctrl+A",
                                        "Selects every piece, the waiting ones too."),
    made<hinders_select_nothing, do_select_nothing>(select_nothing, "Select nothing", "Escape",
                                                    "Lets go of what is selected."),
    made<hinders_select, do_select_next>(
        select_next, "Next piece", "Tab",
        "Selects the next piece, on the wall from left to right and then on the floor."),
    made<hinders_select, do_select_previous>(select_previous, "Piece before", "Shift+Tab",
                                             "Selects the piece before this one."),
    small_nudge<-1, 0>(nudge_left, "Move left", "Left"),
    small_nudge<1, 0>(nudge_right, "Move right", "Right"),
    small_nudge<0, 1>(nudge_up, "Move up", "Up"),
    small_nudge<0, -1>(nudge_down, "Move down", "Down"),
    far_nudge<-1, 0>(nudge_left_far, "Move far left", "Shift+Left"),
    far_nudge<1, 0>(nudge_right_far, "Move far right", "Shift+Right"),
    far_nudge<0, 1>(nudge_up_far, "Move far up", "Shift+Up"),
    far_nudge<0, -1>(nudge_down_far, "Move far down", "Shift+Down"),
    made<hinders_even, do_even>(
        even_gaps, "Even the gaps", "G",
        "Moves planned pieces as little as it takes to make the gaps between neighbours alike."),
    made<hinders_centre, do_centre>(
        centre_group, "Centre on the centre line", "C",
        "Moves the group up or down as one, so that its middle is at the centre line."),
    made<hinders_centre_over, do_centre_over>(
        centre_over, "Centre over the furniture", "O",
        "Moves the group sideways as one, so that its middle is over that of what stands below."),
    made<hinders_turn, do_turn>(turn, "Turn", "T",
                                "Turns by a quarter, from upright to lying and back."),
    made<hinders_swap, do_swap>(swap, "Swap places", "X", "Two pieces change places."),
    made<hinders_pin, do_pin>(pin, "Pin or unpin", "P",
                              "A pinned piece stays where it is when others move."),
    made<hinders_hang, do_hang>(hang, "Hung or planned", "H",
                                "Says whether a piece is on the wall today or only on paper."),
    made<hinders_take_down, do_take_down>(take_down, "Take down", "Backspace",
                                          "Takes a piece off the wall to wait on the floor."),
    made<hinders_duplicate, do_duplicate>(duplicate, "Duplicate", "Ctrl+D",
                                          "Adds the same piece with a frame of its own."),
    made<hinders_remove, do_remove>(remove, "Remove", "Delete",
                                    "Takes what is selected out of the plan."),
    alignment<Line::left>(align_left, "Line up left edges", "Ctrl+Left",
                          "Left edges on one plumb line."),
    alignment<Line::centre_x>(align_centre_x, "Line up middles plumb", "Shift+X",
                              "Middles one above the other on one plumb line."),
    alignment<Line::right>(align_right, "Line up right edges", "Ctrl+Right",
                           "Right edges on one plumb line."),
    alignment<Line::bottom>(align_bottom, "Line up bottom edges", "Ctrl+Down",
                            "Bottom edges on one level line."),
    alignment<Line::centre_y>(align_centre_y, "Line up middles level", "Shift+Y",
                              "Middles side by side on one level line."),
    alignment<Line::top>(align_top, "Line up top edges", "Ctrl+Up", "Top edges on one level line."),
    made<hinders_distribute, do_distribute<Direction::across>>(
        distribute_across, "Spread evenly across", "Shift+G",
        "Equal gaps from left to right; the outermost two stay."),
    made<hinders_distribute, do_distribute<Direction::up>>(
        distribute_up, "Spread evenly upwards", "Ctrl+Shift+G",
        "Equal gaps from bottom to top; the outermost two stay."),
};

constexpr bool is_in_order() {
    for (std::size_t i = 0; i < kCommands.size(); ++i)
        if (kCommands[i].id != static_cast<CommandId>(i))
            return false;
    return kCommands.size() == static_cast<std::size_t>(distribute_up) + 1;
}
static_assert(is_in_order(), "every command stands once, in the order of CommandId");

}  // namespace

std::span<const Command> all_commands() {
    return kCommands;
}

const Command& command(CommandId id) {
    return kCommands.at(static_cast<std::size_t>(id));
}

const Command* command_for_key(std::string_view key) {
    if (key.empty())
        return nullptr;
    const auto* found = std::ranges::find(kCommands, key, &Command::key);
    return found == kCommands.end() ? nullptr : found;
}

}  // namespace wallwright::desk
