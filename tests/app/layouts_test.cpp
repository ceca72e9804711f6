#include "app/actions.h"
#include "edits/pieces.h"
#include "person.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <thread>

using namespace wallwright;
using namespace wallwright::app;

namespace {

wall::Project over_the_sofa() {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_furniture(project, wall::FurnitureType::sofa,
                          geometry::Rect<geometry::Wall>::at({800, 0}, {1900, 800}));
    scenes::add_piece(project, "dune", {300, 1300}, {300, 400});
    scenes::add_piece(project, "gull", {3000, 900}, {300, 400});
    for (const char* id : {"kelp", "moss", "tide"})
        scenes::add_waiting(project, id, {400, 300});
    return project;
}

/// A person who has asked for layouts; the search ends by its rounds, not by the clock.
struct Asked {
    Person person;
    wall::Project before;

    explicit Asked(ImVec2 size = {1280, 800}, float scale = 1)
        : person(over_the_sofa(), size, scale), before(person.state.session.kept()) {
        person.state.layouts.options.seconds = 600;
        person.state.layouts.options.rounds = 40;
        person.window.click("layouts/try");
        wait();
        REQUIRE(layouts().size() >= 3);
    }

    void wait() {
        while (person.state.layouts.is_searching())
            std::this_thread::yield();
        person.window.settle();
    }
    std::span<const desk::RankedLayout> layouts() const { return person.state.layouts.layouts(); }
    desk::Session& session() { return person.state.session; }
    Headless& window() { return person.window; }
    /// Away from everything that could mean something.
    void move_off() {
        const ItemBox& canvas = window().item("canvas");
        window().move_to({canvas.min.x + 5, canvas.min.y + 5});
    }
    std::string step() { return session().history().undo_label(); }
};

bool is_best_first(std::span<const desk::RankedLayout> layouts) {
    return std::ranges::is_sorted(layouts, std::greater(), [](const desk::RankedLayout& layout) {
        return std::pair(-static_cast<int>(layout.candidate.left_out.size()), layout.total);
    });
}

}  // namespace

TEST_CASE("Layouts come under the wall once they are asked for, each with a picture in sight") {
    Asked it;
    for (std::size_t i = 1; i <= it.layouts().size(); ++i)
        CHECK(it.window().has(fmt::format("layouts/{}", i)));
    CHECK(it.person.overlaps("layouts/").empty());
    CHECK(it.person.cut_off("layouts/").empty());
    CHECK(it.session().kept() == it.before);
    it.window().click("layouts/close");
    CHECK_FALSE(it.window().has("layouts/1"));
}

TEST_CASE("At every size of the window the strip leaves the wall most of the height") {
    const ImVec2 size = GENERATE(ImVec2{1280, 800}, ImVec2{1920, 1080});
    const float scale = GENERATE(1.0F, 1.5F);
    CAPTURE(size.x, scale);
    Asked it(size, scale);
    const ItemBox& canvas = it.window().item("canvas");
    CHECK(canvas.max.y - canvas.min.y > 0.5F * size.y);
    CHECK(it.window().item("layouts/1").min.y >= canvas.max.y);
    CHECK(it.person.overlaps("layouts/").empty());
    for (const char* name : {"layouts/search", "layouts/close", "layouts/state"})
        CHECK(it.window().is_in_sight(name));
}

TEST_CASE("The pointer on a layout shows it on the wall, and takes it away again") {
    Asked it;
    it.window().hover("layouts/2");
    CHECK(it.person.state.layouts.shown() == 1);
    CHECK(it.session().has_preview());
    CHECK(it.session().project() != it.before);
    it.window().hover("layouts/3");
    CHECK(it.person.state.layouts.shown() == 2);
    it.move_off();
    CHECK_FALSE(it.session().has_preview());
    CHECK(it.session().project() == it.before);
    CHECK_FALSE(it.session().history().can_undo());
}

TEST_CASE("The wall does not jump in the window while layouts are shown") {
    Asked it;
    const double scale = it.person.state.view.scale();
    const geometry::Point<geometry::Screen> origin = it.person.state.view.to_screen().origin;
    it.window().hover("layouts/1");
    REQUIRE(it.session().has_preview());
    CHECK(it.person.state.view.scale() == scale);
    CHECK(it.person.state.view.to_screen().origin == origin);
}

TEST_CASE("A click takes the layout as one step") {
    Asked it;
    const auto pattern = it.layouts()[1].candidate.pattern;
    it.window().click("layouts/2");
    CHECK(it.step() == desk::step_of(pattern));
    CHECK_FALSE(it.session().has_preview());
    CHECK(it.layouts()[1].on_wall);
    it.window().key("Ctrl+Z");
    CHECK(it.session().kept() == it.before);
    CHECK_FALSE(it.session().history().can_undo());
}

TEST_CASE("Keys go through the layouts, take one and put it away") {
    Asked it;
    it.move_off();
    it.window().key("PageDown");
    CHECK(it.person.state.layouts.shown() == 0);
    it.window().key("Right");
    it.window().key("Down");
    CHECK(it.person.state.layouts.shown() == 2);
    it.window().key("PageUp");
    CHECK(it.person.state.layouts.shown() == 1);
    it.window().key("Escape");
    CHECK_FALSE(it.person.state.layouts.shown());
    CHECK(it.session().project() == it.before);
    it.window().key("PageDown");
    it.window().key("Enter");
    CHECK(it.step() == desk::step_of(it.layouts()[0].candidate.pattern));
    it.window().key("PageUp");
    it.window().key("Shift+L");
    CHECK(it.layouts().back().on_wall);
}

TEST_CASE("A press on the wall and another step put the shown layout away") {
    Asked it;
    it.move_off();
    it.window().key("PageDown");
    REQUIRE(it.session().has_preview());
    it.window().click("canvas");
    CHECK_FALSE(it.session().has_preview());
    it.window().key("PageDown");
    REQUIRE(it.session().has_preview());
    it.window().key("5");
    CHECK_FALSE(it.session().has_preview());
    CHECK_FALSE(it.window().has("layouts/1"));
    it.window().key("4");
    CHECK(it.window().has("layouts/1"));
    CHECK(it.session().kept() == it.before);
}

TEST_CASE("What is found can be stopped, and asking for a frame ends with the search") {
    Person person(over_the_sofa());
    person.state.layouts.options.seconds = 600;
    person.window.key("L");
    CHECK(person.state.layouts.is_searching());
    person.window.ui.memory.wake_in.reset();
    person.window.frame();
    REQUIRE(person.window.ui.memory.wake_in);
    CHECK(*person.window.ui.memory.wake_in <= 0.1);
    person.window.click("layouts/search");
    CHECK_FALSE(person.state.layouts.is_searching());
    CHECK(person.window.has("layouts/1"));
    const ItemBox& canvas = person.window.item("canvas");
    person.window.move_to({canvas.min.x + 5, canvas.min.y + 5});
    person.window.ui.memory.wake_in.reset();
    person.window.frame();
    CHECK_FALSE(person.window.ui.memory.wake_in);
}

TEST_CASE("Another wall puts the layouts of the one before away") {
    Asked it;
    it.window().hover("layouts/1");
    show(it.person.state, desk::Session(scenes::wall_of(3000, 2400)));
    it.window().settle();
    CHECK_FALSE(it.person.state.layouts.is_open());
    CHECK_FALSE(it.window().has("layouts/1"));
}

TEST_CASE("When the wall has changed its layouts fold to a line, until that is undone") {
    Asked it;
    it.window().hover("layouts/2");
    const float open = it.window().item("canvas").max.y;
    const std::vector<wall::PieceId> tide{wall::PieceId{"tide"}, wall::PieceId{"moss"}};
    it.session().apply("Remove", edits::remove_pieces(it.session().kept(), tide));
    it.window().settle();
    CHECK_FALSE(it.session().has_preview());
    CHECK_FALSE(it.window().has("layouts/1"));
    CHECK(it.window().item("canvas").max.y > open + 90);
    for (const char* name : {"layouts/search", "layouts/close", "layouts/state"})
        CHECK(it.window().is_in_sight(name));
    CHECK(it.person.overlaps("layouts/").empty());
    it.window().key("Ctrl+Z");
    CHECK(it.window().has("layouts/1"));
}

TEST_CASE("Layouts of a wall that has changed are searched for anew, or put away") {
    Asked it;
    const std::vector<wall::PieceId> dune{wall::PieceId{"dune"}};
    it.session().apply("Hang", edits::set_state(it.session().kept(), dune, wall::PieceState::hung));
    it.window().settle();
    it.window().click("layouts/search");
    it.wait();
    CHECK(it.window().has("layouts/1"));
    it.session().undo();
    it.window().settle();
    it.window().click("layouts/close");
    CHECK_FALSE(it.window().has("layouts/state"));
}

TEST_CASE("Layouts cannot be asked for where nothing may move, and the button says why") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_hung(project, "kelp", {1000, 1300}, {300, 400});
    Person person(project);
    CHECK_FALSE(person.window.item("layouts/try").enabled);
    person.window.key("L");
    REQUIRE(person.state.session.notice);
    CHECK(person.state.session.notice->text.starts_with("No piece may move"));
    CHECK_FALSE(person.state.layouts.is_open());
}

TEST_CASE("The score has a row for the first measures, and for all when they are asked for") {
    Asked it;
    const auto measures = arrange::all_measures();
    const auto rows = [&] {
        return std::ranges::count_if(measures, [&](const arrange::Measure& measure) {
            return it.window().has(fmt::format("score/{}", measure.name));
        });
    };
    CHECK(rows() == 6);
    CHECK(it.window().has(fmt::format("score/{}", measures[0].name)));
    it.window().click("score/all");
    CHECK(static_cast<std::size_t>(rows()) == measures.size());
    it.window().key("5");
    it.window().key("4");
    CHECK(static_cast<std::size_t>(rows()) == measures.size());
    it.window().click("score/all");
    CHECK(rows() == 6);
}

TEST_CASE("The score is that of the layout under the pointer") {
    Asked it;
    const double before = it.person.state.score.total;
    it.window().hover("layouts/1");
    CHECK(it.person.state.score.total == Approx(it.layouts()[0].total).margin(0.05));
    it.move_off();
    CHECK(it.person.state.score.total == before);
    it.window().hover("score/even_gaps");
    CHECK(it.window().has("tip"));
}

TEST_CASE("A weight is dragged as one step and orders the layouts anew at once") {
    Asked it;
    REQUIRE(it.window().is_in_sight("score/alignment/weight"));
    const ItemBox box = it.window().item("score/alignment/weight");
    const ImVec2 middle{(box.min.x + box.max.x) / 2, (box.min.y + box.max.y) / 2};
    it.window().drag(middle, {middle.x + 80, middle.y});
    REQUIRE(it.session().kept().weights.size() == 1);
    CHECK(it.session().kept().weights[0].measure == "alignment");
    CHECK(it.session().kept().weights[0].weight > 5);
    CHECK(is_best_first(it.layouts()));
    it.window().drag(middle, {middle.x - 20, middle.y});
    it.session().undo();
    REQUIRE(it.session().kept().weights.size() == 1);
    it.session().undo();
    CHECK(it.session().kept() == it.before);
    CHECK_FALSE(it.session().history().can_undo());
    it.session().redo();
    it.window().settle();
    it.window().click("score/usual");
    CHECK(it.session().kept().weights.empty());
}

TEST_CASE("A click on a weight is for typing it") {
    Asked it;
    it.window().click("score/alignment/weight");
    it.window().key("Ctrl+A");
    CHECK(it.session().selection.empty());
    it.window().type("7.5");
    it.window().key("Enter");
    REQUIRE(it.session().kept().weights.size() == 1);
    CHECK(it.session().kept().weights[0].weight == 7.5);
    it.window().key("Ctrl+A");
    CHECK_FALSE(it.session().selection.empty());
    it.session().undo();
    CHECK(it.session().kept() == it.before);
}

TEST_CASE("A wish is set at its piece and taken back in the list of wishes") {
    Person person(over_the_sofa());
    desk::Session& session = person.state.session;
    const wall::Project before = session.kept();
    person.window.click("wall/dune");
    person.window.click("wish/low");
    REQUIRE(session.kept().wishes.size() == 1);
    CHECK(session.kept().wishes[0].kind == wall::WishKind::low);
    person.window.click("wish/high");
    REQUIRE(session.kept().wishes.size() == 1);
    CHECK(session.kept().wishes[0].kind == wall::WishKind::high);
    person.window.key("Escape");
    person.window.settle();
    if (!person.window.has("wish/remove/0"))
        person.window.click("wishes");
    person.window.click("wish/remove/0");
    CHECK(session.kept() == before);
}

TEST_CASE("A piece is wished off a thing by choosing it") {
    Person person(over_the_sofa());
    desk::Session& session = person.state.session;
    person.window.click("wall/dune");
    person.window.click("wish/not-over");
    person.window.click("wish/not-over/1");
    REQUIRE(session.kept().wishes.size() == 1);
    CHECK(session.kept().wishes[0].thing == wall::ThingId(wall::FurnitureId{"sofa"}));
    CHECK_FALSE(person.window.has("wish/not-over"));
    person.window.click("wish/remove/0");
    CHECK(session.kept().wishes.empty());
}

TEST_CASE("Two pieces are wished side by side or apart, three are not") {
    Person person(over_the_sofa());
    desk::Session& session = person.state.session;
    person.window.click("wall/dune");
    person.window.click("wall/gull", "Shift");
    person.window.click("wish/side_by_side");
    REQUIRE(session.kept().wishes.size() == 1);
    person.window.click("wish/apart");
    REQUIRE(session.kept().wishes.size() == 1);
    CHECK(session.kept().wishes[0].kind == wall::WishKind::apart);
    person.window.click("wall/kelp", "Shift");
    CHECK_FALSE(person.window.has("wish/apart"));
}
