#include "app/actions.h"

#include "person.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <set>

using namespace wallwright;
using namespace wallwright::app;

using For = FileDialog::For;

namespace {

wall::Project hall() {
    wall::Project project = scenes::wall_of(3600, 2400);
    project.title = "Hall";
    scenes::add_piece(project, "kelp", {1000, 1400}, {300, 400});
    return project;
}

bool asks_for(Person& person, For what) {
    return person.dialog<FileDialog>() != nullptr && person.dialog<FileDialog>()->what == what;
}

bool is_told(const State& state, const char* words) {
    return state.session.notice && state.session.notice->text == words;
}

/// What each action's key must have led to.
bool has_done(Person& person, ActionId id) {
    State& state = person.state;
    switch (id) {
        case ActionId::new_wall:
            return person.dialog<StartDialog>() != nullptr;
        case ActionId::open:
            return asks_for(person, For::open);
        case ActionId::demo:
            return state.session.kept().title != "Hall";
        case ActionId::save:
            return !person.has_dialog() && state.session.is_saved() && state.session.notice &&
                   state.session.notice->text == "Saved hall.json";
        case ActionId::save_as:
            return asks_for(person, For::save);
        case ActionId::import_frames:
            return asks_for(person, For::import_frames);
        case ActionId::sheets:
            return asks_for(person, For::sheets);
        case ActionId::elevation:
            return asks_for(person, For::elevation);
        case ActionId::marks:
            return asks_for(person, For::marks);
        case ActionId::settings:
            return person.dialog<SettingsDialog>() != nullptr;
        case ActionId::quit:
            return state.quit;
        case ActionId::keys:
            return person.dialog<KeysDialog>() != nullptr;
        case ActionId::fit:
            return state.fitted;
        case ActionId::type:
            return ImGui::GetIO().WantTextInput;
        case ActionId::layouts:
            return state.layouts.is_open();
        case ActionId::next_layout:
        case ActionId::previous_layout:
            return is_told(state, "Try layouts first.");
        case ActionId::take_layout:
            return is_told(state, "Show a layout first.");
        case ActionId::stage_before:
        case ActionId::stage_after:
            return is_told(state, "Grow the group first.");
        case ActionId::turn_over:
            return is_told(state, "Go to the mounts first.");
        case ActionId::card_plan:
            return is_told(state, "Have the card laid out first, in the step Mounts under Card.");
        case ActionId::cutting_sheets:
        case ActionId::plan_and_cutting:
            return is_told(state,
                           "No piece here has a mount. Give one a mount first, in the view Mount.");
        case ActionId::keep_chosen:
            return is_told(state, "Choose a print, or a blank of card, on the bench first.");
        case ActionId::turn_blank:
            return is_told(state, "Hold a blank of card in the hand to turn it.");
        case ActionId::step_room:
            return state.step == desk::Step::room;
        case ActionId::step_pieces:
            return state.step == desk::Step::pieces;
        case ActionId::step_mounts:
            return state.step == desk::Step::mounts;
        case ActionId::step_arrange:
            return state.step == desk::Step::arrange;
        case ActionId::step_hang:
            return state.step == desk::Step::hang;
        case ActionId::preview_pages:
            return state.step == desk::Step::hang && state.hang_view == desk::HangView::pages;
        case ActionId::hang_step_by_step:
            return state.step == desk::Step::hang && state.hang_view == desk::HangView::day;
    }
    return false;
}

}  // namespace

TEST_CASE("No key has two meanings, and each action is at its own place in the list") {
    std::set<std::string_view> keys;
    for (const desk::Command& command : desk::all_commands())
        if (!command.key.empty())
            CHECK(keys.insert(command.key).second);
    for (const Action& one : all_actions()) {
        CAPTURE(one.name);
        if (!one.key.empty())
            CHECK(keys.insert(one.key).second);
        CHECK(action(one.id).name == one.name);
    }
}

TEST_CASE("Each key does what the list of keys says") {
    for (const Action& one : all_actions()) {
        if (one.key.empty())
            continue;
        CAPTURE(one.name, one.key);
        Person person(hall());
        REQUIRE(save_to(person.state, person.folder.file("hall.json")));
        person.state.session.notice.reset();
        person.state.fitted = false;
        person.state.step = one.id == ActionId::step_room ? desk::Step::hang : desk::Step::room;
        if (one.id == ActionId::step_room)
            REQUIRE_FALSE(has_done(person, one.id));
        person.window.key(one.key);
        CHECK(has_done(person, one.id));
    }
    Person person(hall());
    person.window.key("F1");
    CHECK(has_done(person, ActionId::keys));
}

TEST_CASE("The keys of the wall's own commands run them, or say why not") {
    Person person(hall());
    person.window.key("Ctrl+Z");
    REQUIRE(person.state.session.notice);
    CHECK_FALSE(person.state.session.notice->is_problem);
    CHECK(person.state.session.notice->text ==
          desk::command(desk::CommandId::undo).hindrance(person.state.session) + ".");
    person.work();
    person.window.key("Ctrl+Z");
    CHECK(person.state.session.kept().title == "Hall");
    person.window.key("Ctrl+A");
    CHECK(person.state.session.selection.pieces().size() == 1);
    person.window.key("Escape");
    CHECK(person.state.session.selection.empty());
    CHECK_FALSE(press_key(person.state, "Ctrl+Alt+Q"));
    CHECK_FALSE(press_key(person.state, ""));
}

TEST_CASE("While a dialog is open its wall is safe from keys") {
    Person person(hall());
    person.state.session.selection.set(wall::PieceId{"kelp"});
    person.state.dialog = SettingsDialog{};
    person.window.settle();
    person.window.key("Delete");
    person.window.key("Ctrl+Q");
    CHECK(person.state.session.kept().pieces.size() == 1);
    CHECK_FALSE(person.state.quit);
    person.window.key("Escape");
    CHECK_FALSE(person.has_dialog());
    CHECK_FALSE(person.state.session.selection.empty());
}

TEST_CASE("Save writes to the wall's file and remembers it") {
    Person person(hall());
    const std::string file = person.folder.file("hall.json");
    REQUIRE(save_to(person.state, file));
    CHECK(person.state.session.is_saved());
    CHECK(person.state.session.notice->text == "Saved hall.json");
    person.work();
    person.window.key("Ctrl+S");
    CHECK(person.state.session.is_saved());
    CHECK(desk::open(file)->kept().title == "Hall, north");
    const auto kept = desk::read_preferences(desk::settings_folder() / "settings.json");
    REQUIRE(kept.recent.size() == 1);
    CHECK(kept.recent.front() == file);
}

TEST_CASE("A wall that cannot be saved is told so, and stays unsaved") {
    Person person(hall());
    person.work();
    CHECK_FALSE(save_to(person.state, person.folder.file("gone/hall.json")));
    CHECK_FALSE(person.state.session.is_saved());
}

TEST_CASE("A recent wall that is gone leaves the open one as it is") {
    Person person(hall());
    want_open_recent(person.state, person.folder.file("gone.json"));
    CHECK(person.state.session.kept().title == "Hall");
    REQUIRE(person.state.session.notice);
    CHECK(person.state.session.notice->is_problem);
}

TEST_CASE("Sheets, pictures and marks are written as their names say") {
    Person person(hall());
    const auto written = [&](For what, const std::string& name) {
        const std::string file = person.folder.file(name);
        REQUIRE(export_to(person.state, what, file));
        CHECK_FALSE(person.state.session.notice->is_problem);
        return test::read_whole(file);
    };
    CHECK(written(For::sheets, "sheets.pdf").starts_with("%PDF"));
    CHECK(written(For::elevation, "wall.pdf").starts_with("%PDF"));
    CHECK(written(For::elevation, "wall.png").starts_with("\x89PNG"));
    CHECK(written(For::elevation, "wall.svg").find("<svg") != std::string::npos);
    CHECK(written(For::marks, "marks.csv").starts_with("mark,piece,what,"));
    CHECK_FALSE(export_to(person.state, For::marks, person.folder.file("gone/marks.csv")));
}

TEST_CASE("A picture beside the wall's file is named from there") {
    Person person(hall());
    REQUIRE(save_to(person.state, person.folder.file("hall.json")));
    std::filesystem::create_directory(person.folder.file("prints"));
    test::write_whole(person.folder.file("prints/kelp.png"), "\x89PNG\r\n\x1a\n");
    test::write_whole(person.folder.file("notes.png"), "no picture");
    want_picture(person.state, wall::PieceId{"kelp"});
    CHECK_FALSE(import_from(person.state, For::picture, person.folder.file("notes.png")));
    REQUIRE(import_from(person.state, For::picture, person.folder.file("prints/kelp.png")));
    const wall::Project& project = person.state.session.kept();
    const wall::Piece* kelp = find(project, wall::PieceId{"kelp"});
    REQUIRE(kelp->print);
    CHECK(find(project, *kelp->print)->picture == "prints/kelp.png");
    CHECK(person.state.session.history().undo_label() == "Picture for Kelp");
}

TEST_CASE("A table of frames joins the wall as one step") {
    Person person(hall());
    test::write_whole(person.folder.file("frames.csv"),
                      "title,width,height\nDune,300,400\nReed,200,300\n");
    REQUIRE(import_from(person.state, For::import_frames, person.folder.file("frames.csv")));
    CHECK(person.state.session.kept().pieces.size() == 3);
    person.window.key("Ctrl+Z");
    CHECK(person.state.session.kept().pieces.size() == 1);
}

TEST_CASE("A file that another program changed is asked about before it is written over") {
    Person person(hall());
    const std::string file = person.folder.file("hall.json");
    REQUIRE(save_to(person.state, file));
    person.work();
    test::write_whole(file, "of another program");
    SECTION("and a second save replaces it") {
        person.window.key("Ctrl+S");
        CHECK(test::read_whole(file) == "of another program");
        CHECK(person.state.session.notice->is_problem);
        CHECK_FALSE(person.state.session.is_saved());
        person.window.key("Ctrl+S");
        CHECK(person.state.session.is_saved());
    }
    SECTION("but not twice, when its name was chosen anew and confirmed") {
        person.window.key("Ctrl+Shift+S");
        person.window.key("Enter");
        REQUIRE(person.has_dialog());
        CHECK(test::read_whole(file) == "of another program");
        person.window.key("Enter");
        CHECK_FALSE(person.has_dialog());
    }
    if (!person.state.session.is_saved())
        FAIL("it was not saved in the end");
    CHECK(desk::open(file)->kept().title == "Hall, north");
}

TEST_CASE("Nudges in quick succession are one step, after a rest another") {
    Person person(hall());
    person.state.session.selection.set(wall::PieceId{"kelp"});
    const auto x = [&person] { return person.state.session.kept().pieces[0].at->x; };
    person.window.key("Right");
    person.window.key("Right");
    SECTION("a second and more") {
        person.window.rest(1.5F);
        person.window.key("Right");
        person.window.key("Ctrl+Z");
        CHECK(x() == 1002);
    }
    SECTION("less than a second") {
        person.window.rest(0.5F);
        person.window.key("Right");
        person.window.key("Ctrl+Z");
        CHECK(x() == 1000);
    }
}

TEST_CASE("Without a home, and in a working folder that is gone, dialogs begin at the root") {
    Person person(hall());
    person.state.last_folder.clear();
    const OwnVariable home("HOME", "");
    const std::filesystem::path before = std::filesystem::current_path();
    std::filesystem::create_directory(person.folder.file("gone"));
    std::filesystem::current_path(person.folder.file("gone"));
    std::filesystem::remove(person.folder.file("gone"));
    ask_for_file(person.state, For::open);
    std::filesystem::current_path(before);
    REQUIRE(person.dialog<FileDialog>() != nullptr);
    CHECK(person.dialog<FileDialog>()->folder == "/");
}

TEST_CASE("A drag is given up when another window takes the keyboard") {
    Person person(hall());
    const ItemBox& box = person.window.item("wall/kelp");
    const ImVec2 middle{(box.min.x + box.max.x) / 2, (box.min.y + box.max.y) / 2};
    person.window.move_to(middle);
    person.window.press();
    person.window.move_to({middle.x + 60, middle.y});
    REQUIRE(person.state.session.has_preview());
    person.window.lose_focus();
    CHECK_FALSE(person.state.session.has_preview());
    CHECK_FALSE(person.state.pointer.is_busy());
    person.window.move_to({middle.x + 90, middle.y});
    person.window.release();
    CHECK(person.state.session.kept() == hall());
}
