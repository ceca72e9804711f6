// What menus, keys and buttons do that is more than an edit: files, dialogs, leaving.
#pragma once

#include "app/state.h"
#include "desk/command.h"

#include <span>
#include <string_view>

namespace wallwright::app {

enum class ActionId {
    new_wall,
    open,
    demo,
    save,
    save_as,
    import_frames,
    sheets,
    elevation,
    marks,
    card_plan,
    cutting_sheets,
    plan_and_cutting,
    settings,
    quit,
    keys,
    fit,
    type,
    layouts,
    next_layout,
    previous_layout,
    take_layout,
    step_room,
    step_pieces,
    step_mounts,
    step_arrange,
    step_hang,
    stage_before,
    stage_after,
    turn_over,
    keep_chosen,
    turn_blank,
    preview_pages,
    hang_step_by_step
};

/// What the app does beside the wall's own commands (desk/command.h), so that the menu, the keys
/// and the list of keys say the same.
struct Action {
    ActionId id;
    std::string_view name;  ///< "Open..."
    std::string_view key;   ///< As in desk/command.h; no command has the same.
    std::string_view help;  ///< One sentence.
    void (*run)(State&);
};

/// Every action once, in the order of ActionId.
std::span<const Action> all_actions();
const Action& action(ActionId id);

/// Each asks first when there is work that is not saved.
void want_new(State& state);
void want_open(State& state);
void want_open_recent(State& state, const std::filesystem::path& file);
void want_demo(State& state);
void want_quit(State& state);

/// To the session's file, or asks for one.
void save(State& state);
void save_as(State& state);
/// As asked for in the unsaved dialog: saves, then does what the work stood in the way of.
void save_first(State& state, const UnsavedDialog& dialog);
void want_import(State& state);
/// A picture for the print of this piece.
void want_picture(State& state, const wall::PieceId& piece);
/// Pages (those of the preview alone while that is looked at), elevation (.svg, .png or .pdf by the
/// name's ending), marks as CSV.
void want_sheets(State& state);
void want_elevation(State& state);
void want_marks(State& state);
/// The plan of the card as PDF. Without one it is told what to do first.
void want_card_plan(State& state);
/// The sheets for the mounts that are still to be cut as PDF, alone or after the plan of the card.
/// What hinders it is told as a notice.
void want_cutting_sheets(State& state);
void want_plan_and_cutting(State& state);
/// Why there are no cutting sheets now and what to do, as one sentence or two; empty when there
/// are.
std::string cutting_hindrance(const wall::Project& project);

/// Opens the dialog for a file of that name in the folder used last.
void ask_for_file(State& state, FileDialog::For what, const std::string& name = "");
/// Does what a file dialog was opened for with the file that was chosen. A Problem stays with the
/// dialog; otherwise it is closed, so `dialog` must not be the one in the state.
Outcome file_chosen(State& state, const FileDialog& dialog, const std::filesystem::path& file);
/// The work may be lost: does what it stood in the way of.
void unsaved_given_up(State& state, const UnsavedDialog& dialog);
/// Puts the dialog away without doing what it was opened for.
void close_dialog(State& state);

/// Shows the wall of a file, and remembers the file.
Outcome open_wall(State& state, const std::filesystem::path& file);
/// Writes the wall, and remembers the file. `changed` as in desk::save.
Outcome save_to(State& state, const std::filesystem::path& file,
                desk::IfChanged changed = desk::IfChanged::ask);
/// What the file is to hold, by what it is for.
Outcome export_to(State& state, FileDialog::For what, const std::filesystem::path& file);
/// Takes in what the file holds: frames, or a picture.
Outcome import_from(State& state, FileDialog::For what, const std::filesystem::path& file);

/// Makes the wall and shows it with its frames waiting.
Outcome begin(State& state, const desk::Start& start);
/// Shows work that was left behind by a program that no longer runs; it counts as not saved.
void bring_back(State& state, desk::Recovery::Found found);

/// Puts another session before the person.
void show(State& state, desk::Session session);
/// Writes the person's settings; a Problem becomes a notice.
void keep_preferences(State& state);

/// A key with its modifiers as in desk/command.h, unless a text field has the keyboard. True when
/// it meant something.
bool press_key(State& state, std::string_view key);
/// A key that is to be done once the number that is being typed has been taken in: by
/// do_what_waited, at the end of the frame.
void later(State& state, std::string_view key);
void do_what_waited(State& state);
/// The hand drags something.
bool is_hand_busy(const State& state);
/// What the hand is doing is given up.
void let_go(State& state);
/// Once a frame: a problem that was told goes with the next step of the work, and when the person
/// looks at something else.
void forget_old_problem(State& state);

}  // namespace wallwright::app
