#include "app/actions.h"
#include "person.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace wallwright;
using namespace wallwright::app;

using Names = std::vector<std::string>;

namespace {

wall::Project hall() {
    wall::Project project = scenes::wall_of(3600, 2400);
    project.title = "Hall";
    return project;
}

Dialog any_dialog(int which) {
    desk::Recovery::Found found;
    found.project = hall();
    FileDialog file;
    file.title = "Open a wall";
    file.action = "Open";
    file.endings = {".json"};
    file.folder = "/";
    switch (which) {
        case 0:
            return StartDialog{};
        case 1:
            return file;
        case 2:
            return KeysDialog{};
        case 3:
            return SettingsDialog{};
        case 4:
            return UnsavedDialog{};
        default:
            return RecoveryDialog{{found}};
    }
}

/// Of each dialog the button that must never be out of reach.
constexpr const char* kWayOut[] = {"start/begin",    "file-dialog/do", "keys/close",
                                   "settings/close", "unsaved/save",   "recovery/later"};

}  // namespace

TEST_CASE("Every dialog keeps its buttons in sight at any usual size") {
    const int which = GENERATE(range(0, 6));
    const float scale = GENERATE(1.F, 2.F);
    const ImVec2 size = GENERATE(ImVec2{1024, 700}, ImVec2{1280, 800}, ImVec2{1920, 1080});
    Person person(hall(), size, scale);
    person.state.dialog = any_dialog(which);
    person.window.settle();
    CAPTURE(which, scale, size.x);
    REQUIRE(person.window.has(kWayOut[which]));
    CHECK(person.window.is_in_sight(kWayOut[which]));
    for (const char* family : {"start/", "file-dialog/", "settings/", "unsaved/", "recovery/"})
        CHECK(person.overlaps(family) == Names{});
}

TEST_CASE("The start dialog makes the wall that was asked for") {
    Person person(hall());
    person.window.key("Ctrl+N");
    person.window.fill_in("start/title", "Landing");
    person.window.fill_in("start/wall", "4 m x 2.5 m");
    person.window.fill_in("start/furniture-0-size", "180 x 80 cm");
    person.window.click("start/add-furniture");
    person.window.fill_in("start/furniture-1-left", "200");
    person.window.fill_in("start/frames-0-size", "30 x 40 cm");
    person.window.fill_in("start/frames-0-count", "4");
    person.window.click("start/add-frames");
    person.window.fill_in("start/frames-1-size", "500 x 700");
    person.window.click("start/begin");
    REQUIRE_FALSE(person.has_dialog());
    const wall::Project& project = person.state.session.kept();
    CHECK(project.title == "Landing");
    CHECK(geometry::bounds(project.room.outline).size() == wall::Size{4000, 2500});
    REQUIRE(project.room.furniture.size() == 2);
    CHECK(project.room.furniture[0].type == wall::FurnitureType::sofa);
    // In the middle, where it was before the wall and it changed their sizes.
    CHECK(project.room.furniture[0].place == wall::Rect<wall::Wall>::at({1100, 0}, {1800, 800}));
    CHECK(project.room.furniture[1].place.left() == 200);
    REQUIRE(project.pieces.size() == 5);
    CHECK(outside_size(project, project.pieces[0]) == wall::Size{300, 400});
    CHECK(outside_size(project, project.pieces[4]) == wall::Size{500, 700});
    CHECK(project.pieces[4].state == wall::PieceState::waiting);
    CHECK(person.state.step == desk::Step::arrange);
    CHECK_FALSE(person.state.session.is_saved());
}

TEST_CASE("What was added in the start dialog can be removed again") {
    Person person(hall());
    person.window.key("Ctrl+N");
    person.window.click("start/furniture-0-remove");
    person.window.click("start/frames-0-remove");
    person.window.click("start/begin");
    CHECK(person.state.session.kept().room.furniture.empty());
    CHECK(person.state.session.kept().pieces.empty());
}

TEST_CASE("Words that are no size stay in the start dialog with the reason") {
    Person person(hall());
    person.window.key("Ctrl+N");
    person.window.fill_in("start/wall", "wide");
    CHECK(person.window.has("start/wall/reason"));
    person.window.key("Escape");
    CHECK(person.has_dialog());
    person.window.key("Escape");
    CHECK_FALSE(person.has_dialog());
    CHECK(person.state.session.kept().title == "Hall");
}

TEST_CASE("Escape in a list that is dropped down closes the list, and then the dialog") {
    Person person(hall());
    person.window.key("Ctrl+N");
    person.window.click("start/unit");
    REQUIRE(person.window.has("start/unit/1"));
    person.window.key("Escape");
    CHECK_FALSE(person.window.has("start/unit/1"));
    CHECK(person.has_dialog());
    person.window.key("Escape");
    CHECK_FALSE(person.has_dialog());
}

TEST_CASE("A typed name gets its ending, and Enter saves") {
    Person person(hall());
    person.window.key("Ctrl+S");
    CHECK(person.dialog<FileDialog>()->name == "hall.json");
    person.window.fill_in("file-dialog/name", "landing");
    CHECK_FALSE(person.has_dialog());
    CHECK(std::filesystem::exists(person.folder.file("landing.json")));
    CHECK(person.state.session.file() == person.folder.file("landing.json"));
}

TEST_CASE("Saving over another file asks first") {
    Person person(hall());
    const std::string other = person.folder.file("other.json");
    test::write_whole(other, "another");
    person.window.key("Ctrl+Shift+S");
    person.window.fill_in("file-dialog/name", "other.json");
    REQUIRE(person.has_dialog());
    CHECK(person.window.has("dialog/problem"));
    CHECK(test::read_whole(other) == "another");
    SECTION("another name takes the question back") {
        person.window.fill_in("file-dialog/name", "new.json");
        CHECK_FALSE(person.has_dialog());
        CHECK(test::read_whole(other) == "another");
    }
    SECTION("a second press replaces") {
        person.window.click("file-dialog/do");
        CHECK_FALSE(person.has_dialog());
        CHECK(desk::open(other)->kept().title == "Hall");
    }
    SECTION("and so does a second Enter") {
        person.window.key("Enter");
        CHECK_FALSE(person.has_dialog());
        CHECK(desk::open(other)->kept().title == "Hall");
    }
}

TEST_CASE("The file dialog goes into folders and out of them, and a double click opens") {
    Person person(hall());
    std::filesystem::create_directory(person.folder.file("walls"));
    REQUIRE(save_to(person.state, person.folder.file("walls/hall.json")));
    show(person.state, desk::Session(scenes::wall_of(1000, 1000)));
    person.window.key("Ctrl+O");
    person.window.double_click("file-dialog/folder-0");
    CHECK(person.dialog<FileDialog>()->folder == person.folder.file("walls"));
    person.window.click("file-dialog/part-0");
    CHECK(person.dialog<FileDialog>()->folder == "/");
    person.window.fill_in("file-dialog/name", person.folder.path());
    CHECK(person.dialog<FileDialog>()->folder == person.folder.path());
    CHECK(person.dialog<FileDialog>()->name.empty());
    person.window.fill_in("file-dialog/name", "walls");
    person.window.click("file-dialog/file-0");
    CHECK(person.dialog<FileDialog>()->name == "hall.json");
    person.window.double_click("file-dialog/file-0");
    CHECK_FALSE(person.has_dialog());
    CHECK(person.state.session.kept().title == "Hall");
    CHECK(person.state.last_folder == person.folder.file("walls"));
}

TEST_CASE("A file that cannot be opened keeps the dialog with the reason") {
    Person person(hall());
    person.window.key("Ctrl+O");
    person.window.click("file-dialog/do");
    CHECK(person.window.has("dialog/problem"));
    person.window.fill_in("file-dialog/name", "gone.json");
    REQUIRE(person.has_dialog());
    CHECK(person.dialog<FileDialog>()->problem.find("gone.json") != std::string::npos);
    person.window.key("Escape");
    CHECK_FALSE(person.has_dialog());
}

TEST_CASE("Leaving with unsaved work asks first") {
    Person person(hall());
    person.work();
    person.window.key("Ctrl+Q");
    REQUIRE(person.dialog<UnsavedDialog>() != nullptr);
    CHECK_FALSE(person.state.quit);
    SECTION("cancel stays") {
        person.window.click("unsaved/cancel");
        CHECK_FALSE(person.has_dialog());
        CHECK_FALSE(person.state.quit);
    }
    SECTION("without saving it leaves") {
        person.window.click("unsaved/give-up");
        CHECK(person.state.quit);
    }
    SECTION("saving asks for a name, then leaves") {
        person.window.click("unsaved/save");
        CHECK_FALSE(person.state.quit);
        REQUIRE(person.dialog<FileDialog>() != nullptr);
        person.window.key("Enter");
        CHECK(person.state.quit);
        CHECK(person.state.session.is_saved());
        CHECK(std::filesystem::exists(person.folder.file("hall-north.json")));
    }
    SECTION("giving up the name stays, also after a later save") {
        person.window.click("unsaved/save");
        person.window.click("file-dialog/cancel");
        REQUIRE(save_to(person.state, person.folder.file("later.json")));
        CHECK_FALSE(person.state.quit);
    }
}

TEST_CASE("Saving first goes on with what was wanted") {
    Person person(hall());
    REQUIRE(save_to(person.state, person.folder.file("hall.json")));
    person.work();
    person.window.key("Ctrl+O");
    person.window.click("unsaved/save");
    CHECK(person.state.session.is_saved());
    REQUIRE(person.dialog<FileDialog>() != nullptr);
    CHECK(person.dialog<FileDialog>()->what == FileDialog::For::open);
}

TEST_CASE("Work left behind is brought back as unsaved, or thrown away") {
    Person person(hall());
    const std::string kept = person.folder.file("kept.json");
    test::write_whole(kept, "{}");
    desk::Recovery::Found found;
    found.file = kept;
    found.project = scenes::wall_of(2000, 2000);
    found.project.title = "Landing";
    found.original = person.folder.file("landing.json");
    person.state.dialog = RecoveryDialog{{found, found}};
    person.window.settle();
    SECTION("brought back") {
        person.window.click("recovery/bring-back-0");
        CHECK_FALSE(person.has_dialog());
        CHECK(person.state.session.kept().title == "Landing");
        CHECK(person.state.session.file() == found.original);
        CHECK_FALSE(person.state.session.is_saved());
        CHECK(person.state.brought_back.size() == 1);
        CHECK(std::filesystem::exists(kept));
    }
    SECTION("thrown away") {
        person.window.click("recovery/throw-away-0");
        CHECK_FALSE(std::filesystem::exists(kept));
        REQUIRE(person.dialog<RecoveryDialog>() != nullptr);
        person.window.click("recovery/throw-away-0");
        CHECK_FALSE(person.has_dialog());
        CHECK(person.state.session.kept().title == "Hall");
    }
}

TEST_CASE("Settings change the look and the size of the text, and are kept") {
    Person person(hall());
    person.state.dialog = SettingsDialog{};
    person.window.settle();
    person.window.click("settings/text");
    person.window.click("settings/text/7");
    CHECK(person.state.preferences.text_scale == 2.0);
    CHECK(desk::read_preferences(desk::settings_folder() / "settings.json").text_scale == 2.0);
    person.window.click("settings/close");
    CHECK_FALSE(person.has_dialog());
}
