#include "app/actions.h"

#include "app/bench/boards.h"
#include "app/plans.h"
#include "edits/edit.h"
#include "edits/room.h"

#include <fmt/format.h>

#include <cstdlib>

namespace wallwright::app {

namespace {

using Then = UnsavedDialog::Then;

void problem_notice(State& state, const Outcome& outcome) {
    if (!outcome)
        state.session.notice = desk::Notice{true, to_text(outcome.error())};
}

/// Goes on at once when nothing can be lost.
void unless_unsaved(State& state, const UnsavedDialog& then) {
    if (state.session.is_saved())
        unsaved_given_up(state, then);
    else
        state.dialog = then;
}

/// The working folder may be gone.
std::filesystem::path working_folder() {
    std::error_code error;
    std::filesystem::path folder = std::filesystem::current_path(error);
    return error ? "/" : folder;
}

std::filesystem::path usual_folder(const State& state) {
    if (!state.last_folder.empty())
        return state.last_folder;
    if (state.session.file().is_absolute())
        return state.session.file().parent_path();
    const char* home = std::getenv("HOME");
    return home != nullptr && *home != '\0' ? std::filesystem::path(home) : working_folder();
}

/// A sofa in the middle of a wall of usual size, and a few frames.
desk::Start usual_start(units::LengthUnit unit) {
    desk::Start start;
    start.unit = unit;
    const wall::Size sofa = edits::usual_size(wall::FurnitureType::sofa);
    start.furniture = {{wall::FurnitureType::sofa, sofa, (start.wall.width - sofa.width) / 2}};
    start.frames = {{{300, 400}, 3}};
    return start;
}

struct FileWords {
    std::string title;
    std::string action;
    std::vector<std::string> endings;
};

FileWords words_for(FileDialog::For what) {
    switch (what) {
        case FileDialog::For::open:
            return {"Open a wall", "Open", {".json"}};
        case FileDialog::For::save:
            return {"Save the wall as", "Save", {".json"}};
        case FileDialog::For::import_frames:
            return {"Import a table of frames", "Import", {".csv"}};
        case FileDialog::For::picture:
            return {"Choose a picture for the print", "Choose", {".png"}};
        case FileDialog::For::sheets:
            return {"Sheets to print, as a PDF", "Write", {".pdf"}};
        case FileDialog::For::elevation:
            return {"A picture of the wall", "Write", {".png", ".svg", ".pdf"}};
        case FileDialog::For::card_plan:
            return {"How the card is cut, as a PDF", "Write", {".pdf"}};
        case FileDialog::For::cutting_sheets:
            return {"Cutting sheets of the mounts, as a PDF", "Write", {".pdf"}};
        case FileDialog::For::plan_and_cutting:
            return {"Card plan and cutting sheets, as a PDF", "Write", {".pdf"}};
        case FileDialog::For::chosen_sheets:
            return {"These pages, as a PDF", "Write", {".pdf"}};
        case FileDialog::For::marks:
            break;
    }
    return {"Marks as a table", "Write", {".csv"}};
}

/// A person who was asked about the file has chosen to replace it, whatever it holds.
desk::IfChanged if_changed(const FileDialog& dialog) {
    return dialog.asked_to_replace ? desk::IfChanged::replace : desk::IfChanged::ask;
}

Outcome show_demo(State& state) {
    auto project = desk::demo_wall();
    if (!project)
        return fail(std::move(project.error()));
    show(state, desk::Session(std::move(*project), {}, desk::demo_folder()));
    return {};
}

void after_save(State& state) {
    const std::optional<UnsavedDialog> then = std::exchange(state.after_saving, std::nullopt);
    if (then)
        unsaved_given_up(state, *then);
}

}  // namespace

void want_new(State& state) {
    unless_unsaved(state, {Then::start, {}});
}

void want_open(State& state) {
    unless_unsaved(state, {Then::open, {}});
}

void want_open_recent(State& state, const std::filesystem::path& file) {
    unless_unsaved(state, {Then::open_recent, file});
}

void want_demo(State& state) {
    unless_unsaved(state, {Then::demo, {}});
}

void want_quit(State& state) {
    unless_unsaved(state, {Then::quit, {}});
}

void save(State& state) {
    if (state.session.file().empty())
        return save_as(state);
    problem_notice(state, save_to(state, state.session.file(), desk::IfChanged::ask));
}

void save_as(State& state) {
    const std::string name = state.session.file().filename().string();
    ask_for_file(state, FileDialog::For::save,
                 name.empty() ? edits::id_from(state.session.kept().title) + ".json" : name);
}

void save_first(State& state, const UnsavedDialog& dialog) {
    state.after_saving = dialog;
    state.dialog = {};
    save(state);
    // Without a dialog for the file's name the saving is over, well or not.
    if (std::holds_alternative<std::monostate>(state.dialog))
        state.after_saving.reset();
}

void ask_for_file(State& state, FileDialog::For what, const std::string& name) {
    FileWords words = words_for(what);
    FileDialog dialog;
    dialog.what = what;
    dialog.title = std::move(words.title);
    dialog.action = std::move(words.action);
    dialog.endings = std::move(words.endings);
    dialog.folder = usual_folder(state);
    dialog.name = name;
    state.dialog = std::move(dialog);
}

Outcome file_chosen(State& state, const FileDialog& dialog, const std::filesystem::path& file) {
    using For = FileDialog::For;
    const bool takes_in = dialog.what == For::import_frames || dialog.what == For::picture;
    const Outcome done = dialog.what == For::open   ? open_wall(state, file)
                         : dialog.what == For::save ? save_to(state, file, if_changed(dialog))
                         : takes_in                 ? import_from(state, dialog.what, file)
                                                    : export_to(state, dialog.what, file);
    if (!done)
        return done;
    state.last_folder = file.parent_path();
    // Saving may have led on to another dialog.
    const auto* open = std::get_if<FileDialog>(&state.dialog);
    if (open != nullptr && open->what == dialog.what)
        state.dialog = {};
    return {};
}

void unsaved_given_up(State& state, const UnsavedDialog& dialog) {
    const UnsavedDialog then = dialog;
    state.dialog = {};
    switch (then.then) {
        case Then::quit:
            state.quit = true;
            break;
        case Then::start:
            state.dialog = StartDialog{usual_start(state.session.kept().unit), ""};
            break;
        case Then::open:
            ask_for_file(state, FileDialog::For::open);
            break;
        case Then::open_recent:
            problem_notice(state, open_wall(state, then.file));
            break;
        case Then::demo:
            problem_notice(state, show_demo(state));
            break;
    }
}

void close_dialog(State& state) {
    state.dialog = {};
    state.after_saving.reset();
    state.picture_for.reset();
}

Outcome open_wall(State& state, const std::filesystem::path& file) {
    auto opened = desk::open(file);
    if (!opened)
        return fail(std::move(opened.error()));
    show(state, std::move(*opened));
    remember(state.preferences, state.session.file());
    keep_preferences(state);
    return {};
}

Outcome save_to(State& state, const std::filesystem::path& file, desk::IfChanged changed) {
    if (const auto saved = desk::save(state.session, file, changed); !saved)
        return saved;
    state.session.notice = desk::Notice{false, fmt::format("Saved {}", file.filename().string())};
    remember(state.preferences, state.session.file());
    keep_preferences(state);
    after_save(state);
    return {};
}

Outcome begin(State& state, const desk::Start& start) {
    auto project = desk::new_wall(start);
    if (!project)
        return fail(std::move(project.error()));
    desk::Session session(std::move(*project));
    session.mark_unsaved();
    show(state, std::move(session));
    return {};
}

void bring_back(State& state, desk::Recovery::Found found) {
    desk::Session session(found.project, found.original, found.pictures);
    session.mark_unsaved();
    show(state, std::move(session));
    state.brought_back.push_back(std::move(found));
}

void show(State& state, desk::Session session) {
    let_go(state);
    state.layouts.close(state.session);
    give_plans_up(state);
    give_boards_up(state);
    state.session = std::move(session);
    state.picture = {};
    state.bench = {};
    state.mount_picture = {};
    state.preview = {};
    state.day.clear();
    state.day_picture = {};
    state.hang_view = desk::HangView::wall;
    state.pointer_at.reset();
    state.told_problem = {};
    state.step = desk::Step::arrange;
    state.fitted = true;
    state.other_session = true;
    close_dialog(state);
}

void forget_old_problem(State& state) {
    std::optional<desk::Notice>& notice = state.session.notice;
    const ToldProblem& before = state.told_problem;
    const std::uint64_t wall = state.session.kept_version();
    const bool is_old = notice && notice->is_problem && notice->text == before.text;
    if (is_old && (before.step != state.step || before.view != state.bench.view ||
                   before.hang != state.hang_view || before.wall != wall))
        notice.reset();
    const bool is_told = notice && notice->is_problem;
    state.told_problem = {is_told ? notice->text : "", state.step, state.bench.view,
                          state.hang_view, wall};
}

void keep_preferences(State& state) {
    problem_notice(state, desk::write_preferences(desk::settings_folder() / "settings.json",
                                                  state.preferences));
}

}  // namespace wallwright::app
