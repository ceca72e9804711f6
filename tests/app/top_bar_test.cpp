#include "app/actions.h"
#include "person.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <cstdlib>

using namespace wallwright;
using namespace wallwright::app;

namespace {

wall::Project titled(const std::string& title) {
    wall::Project project = scenes::wall_of(3600, 2400);
    project.title = title;
    scenes::add_piece(project, "kelp", {1000, 1400}, {300, 400});
    return project;
}

}  // namespace

TEST_CASE("Nothing in the top bar overlaps or is cut off at any usual size") {
    const float width = GENERATE(1024.F, 1280.F, 1920.F);
    const float scale = GENERATE(1.F, 2.F);
    const std::string title =
        GENERATE(as<std::string>(), "Hall", "The long wall on the landing, above the old stair");
    Person person(titled(title), {width, 800}, scale);
    person.work();
    for (const desk::Step step : {desk::Step::room, desk::Step::mounts, desk::Step::arrange}) {
        person.state.step = step;
        person.window.settle();
        CAPTURE(width, scale, title);
        CHECK(person.overlaps("bar/") == std::vector<std::string>{});
        CHECK(person.cut_off("bar/") == std::vector<std::string>{});
        CHECK(person.window.has("bar/file"));
        CHECK(person.window.has("bar/step-5"));
        CHECK(person.window.has("bar/undo"));
        CHECK(person.window.has("bar/keys"));
    }
}

TEST_CASE("What a button of a bar tells covers no other button and stays in the window") {
    Person person(titled("Hall"));
    person.state.step = desk::Step::mounts;
    person.window.settle();
    for (const char* name : {"bar/step-1", "bar/keys", "bench/view-mount", "bench/view-card"}) {
        CAPTURE(name);
        person.window.hover(name);
        REQUIRE(person.window.has("tip"));
        const ItemBox& tip = person.window.item("tip");
        CHECK(tip.min.y > person.window.item(name).max.y);
        CHECK(tip.min.x >= 0);
        CHECK(tip.max.x <= 1280);
    }
}

TEST_CASE("At 1280 px everything is said") {
    Person person(titled("Attic room, south wall"));
    for (const char* name :
         {"bar/title", "bar/saved", "bar/redo", "bar/unit-mm", "bar/unit-in", "bar/look"})
        CHECK(person.window.has(name));
}

TEST_CASE("A narrow window keeps the title as long as there is room, and the rest in reach") {
    Person person(titled("Attic room, south wall"), {700, 800});
    CHECK(person.window.has("bar/unit"));
    CHECK_FALSE(person.window.has("bar/unit-cm"));
    CHECK(person.overlaps("bar/") == std::vector<std::string>{});
    Person cramped(titled("Attic room, south wall"), {420, 800});
    CHECK(cramped.window.has("bar/file"));
    CHECK(cramped.overlaps("bar/") == std::vector<std::string>{});
    CHECK(cramped.cut_off("bar/") == std::vector<std::string>{});
}

TEST_CASE("The unit is one step, which undo takes back") {
    Person person(titled("Hall"));
    person.window.click("bar/unit-cm");
    CHECK(person.state.session.kept().unit == units::LengthUnit::cm);
    CHECK(person.state.session.history().undo_label() == "Measure in cm");
    person.window.click("bar/undo");
    CHECK(person.state.session.kept().unit == units::LengthUnit::mm);
    person.window.click("bar/redo");
    CHECK(person.state.session.kept().unit == units::LengthUnit::cm);
}

TEST_CASE("Where there is room for one unit alone, each press goes to the next") {
    Person person(titled("Hall"), {700, 800});
    for (const auto unit :
         {units::LengthUnit::cm, units::LengthUnit::inch, units::LengthUnit::mm}) {
        person.window.click("bar/unit");
        CHECK(person.state.session.kept().unit == unit);
    }
}

TEST_CASE("With nothing to undo the button does nothing") {
    Person person(titled("Hall"));
    CHECK_FALSE(person.window.item("bar/undo").enabled);
    const std::uint64_t version = person.state.session.version();
    person.window.click("bar/undo");
    CHECK(person.state.session.version() == version);
    CHECK_FALSE(person.state.session.notice);
    person.work();
    CHECK(person.window.item("bar/undo").enabled);
}

TEST_CASE("The five steps are chosen by a click") {
    Person person(titled("Hall"));
    person.window.click("bar/step-1");
    CHECK(person.state.step == desk::Step::room);
    person.window.click("bar/step-2");
    CHECK(person.state.step == desk::Step::pieces);
    person.window.click("bar/step-5");
    CHECK(person.state.step == desk::Step::hang);
    person.window.click("bar/step-4");
    CHECK(person.state.step == desk::Step::arrange);
    person.window.click("bar/step-3");
    CHECK(person.state.step == desk::Step::mounts);
}

TEST_CASE("Light or dark is remembered") {
    Person person(titled("Hall"));
    person.window.click("bar/look");
    CHECK(person.state.preferences.dark);
    CHECK(desk::read_preferences(desk::settings_folder() / "settings.json").dark);
    person.window.click("bar/look");
    CHECK_FALSE(desk::read_preferences(desk::settings_folder() / "settings.json").dark);
}

TEST_CASE("The file menu opens the dialogs that it names") {
    Person person(titled("Hall"));
    using For = FileDialog::For;
    for (const auto& [name, what] :
         {std::pair("file/open", For::open), std::pair("file/save-as", For::save),
          std::pair("file/import", For::import_frames), std::pair("file/sheets", For::sheets),
          std::pair("file/elevation", For::elevation), std::pair("file/marks", For::marks)}) {
        CAPTURE(name);
        person.window.click("bar/file");
        person.window.click(name);
        REQUIRE(person.dialog<FileDialog>() != nullptr);
        CHECK(person.dialog<FileDialog>()->what == what);
        CHECK_FALSE(person.window.has("file/open"));
        person.window.key("Escape");
        CHECK_FALSE(person.has_dialog());
    }
}

TEST_CASE("The file menu can be put away, and keeps the keys to itself") {
    Person person(titled("Hall"));
    person.state.session.selection.set(wall::PieceId{"kelp"});
    person.window.click("bar/file");
    person.window.key("Delete");
    CHECK(person.state.session.kept().pieces.size() == 1);
    person.window.key("Escape");
    CHECK_FALSE(person.window.has("file/open"));
    CHECK_FALSE(person.state.session.selection.empty());
}

TEST_CASE("A wall that was open lately is opened again from the menu") {
    Person person(titled("Hall"));
    const std::string file = person.folder.file("hall.json");
    REQUIRE(save_to(person.state, file));
    show(person.state, desk::Session(titled("Landing")));
    person.window.settle();
    person.window.click("bar/file");
    person.window.click("file/recent");
    person.window.click("file/recent-0");
    CHECK(person.state.session.kept().title == "Hall");
    CHECK(person.state.session.file() == file);
}

TEST_CASE("The demo wall opens from the menu, with its pictures") {
    Person person(titled("Hall"));
    person.window.click("bar/file");
    person.window.click("file/demo");
    CHECK(person.state.session.kept().pieces.size() > 1);
    CHECK(person.state.session.file().empty());
    CHECK(person.state.session.picture_folder() == desk::demo_folder());
    CHECK(person.state.other_session);
}
