#include "app/actions.h"
#include "app/panels/panels.h"
#include "edits/room.h"
#include "person.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <chrono>
#include <thread>

using namespace wallwright;
using namespace wallwright::app;

namespace {

wall::Project growing_wall() {
    wall::Project project = scenes::wall_of(4000, 2400);
    scenes::add_hung(project, "kelp", {800, 1300}, {400, 400});
    scenes::add_hung(project, "moss", {1260, 1300}, {400, 400});
    scenes::add_waiting(project, "dune", {400, 400});
    scenes::add_waiting(project, "tide", {300, 400});
    scenes::add_furniture(project, wall::FurnitureType::lamp, {{3200, 0}, {3500, 1600}});
    return project;
}

/// In the step arrange, with searches that end by themselves soon.
struct Planner : Person {
    explicit Planner(ImVec2 size = {1280, 800}, float scale = 1)
        : Person(growing_wall(), size, scale) {
        state.growth.options.rounds = 2;
    }

    void wait() {
        using namespace std::chrono_literals;
        for (int i = 0; i < 20000; ++i) {
            window.frame();
            if (!state.growth.is_running() && !state.suggestions.is_running())
                return window.settle();
            std::this_thread::sleep_for(2ms);
        }
        FAIL("the search does not come to an end");
    }
    void grow() {
        window.click("growth/toward");
        window.click("growth/toward/1");
        window.click("growth/go");
        wait();
    }
    void look() {
        window.click("suggest/go");
        wait();
    }
    [[nodiscard]] bool waits(const char* id) const {
        return wall::find(state.session.project(), wall::PieceId{id})->state ==
               wall::PieceState::waiting;
    }
};

ImVec2 middle(const ItemBox& box) {
    return {(box.min.x + box.max.x) / 2, (box.min.y + box.max.y) / 2};
}

}  // namespace

TEST_CASE("A target is chosen from the list and the waiting pieces grow toward it in one step") {
    Planner person;
    CHECK_FALSE(person.window.item("growth/go").enabled);
    person.grow();
    CHECK(person.state.session.history().undo_label() == "Grow toward the lamp");
    CHECK_FALSE(person.waits("dune"));
    CHECK_FALSE(person.waits("tide"));
    CHECK(person.window.has("stage/2"));
    person.window.key("Ctrl+Z");
    CHECK(person.waits("dune"));
    CHECK_FALSE(person.window.has("stage/2"));
}

TEST_CASE("A point is the target when the wall is pressed next, and nothing is selected by that") {
    Planner person;
    const geometry::Point<geometry::Wall> kelp{1000, 1500};
    person.window.click("growth/toward");
    person.window.click("growth/toward/6");
    CHECK(person.window.has("growth/press"));
    person.window.click("wall/kelp");
    const auto target = person.state.session.kept().target;
    REQUIRE(target);
    const auto at = std::get<geometry::Point<geometry::Wall>>(*target);
    CHECK(geometry::distance(at, kelp) < 2 * person.state.view.mm(1) + 1);
    CHECK(person.state.session.selection.empty());
    person.window.click("wall/kelp");
    CHECK(person.state.session.selection.one_piece() == wall::PieceId{"kelp"});
    CHECK(person.state.session.kept().target == target);
}

TEST_CASE("Escape gives up that a point is to be pressed") {
    Planner person;
    person.window.click("growth/toward");
    person.window.click("growth/toward/6");
    person.window.key("Escape");
    CHECK_FALSE(person.window.has("growth/press"));
    person.window.click("wall/kelp");
    CHECK_FALSE(person.state.session.kept().target);
}

TEST_CASE("The slider shows the stages by hand and by arrow keys and leaves no trace") {
    Planner person;
    person.grow();
    const wall::Project grown = person.state.session.kept();
    const std::string label(person.state.session.history().undo_label());
    person.window.click("stage/0");
    CHECK(person.waits("dune"));
    CHECK(person.waits("tide"));
    person.window.key("Right");
    CHECK(person.waits("dune") != person.waits("tide"));
    person.window.key("Home");
    CHECK(person.waits("dune"));
    person.window.key("End");
    CHECK(person.state.session.project() == grown);
    person.window.key("Shift+PageUp");
    CHECK(person.waits("dune") != person.waits("tide"));
    person.window.key("Escape");
    CHECK_FALSE(person.state.session.has_preview());
    CHECK(person.state.session.kept() == grown);
    CHECK(person.state.session.history().undo_label() == label);
}

TEST_CASE("The handle can be dragged along the stages") {
    Planner person;
    person.grow();
    person.window.drag(middle(person.window.item("stage/2")),
                       middle(person.window.item("stage/0")));
    CHECK(person.waits("dune"));
    CHECK(person.state.stages.at(person.state.session) == 0);
}

TEST_CASE("While an earlier stage is shown a press on the wall takes hold of the wall itself") {
    Planner person;
    person.grow();
    const wall::Project grown = person.state.session.kept();
    person.window.click("stage/0");
    const ImVec2 dune = [&] {
        const auto place =
            wall::place_of(grown, *wall::find(grown, wall::PieceId{"dune"}))->centre();
        const auto at = person.state.view.to_screen()(place);
        return ImVec2{static_cast<float>(at.x), static_cast<float>(at.y)};
    }();
    person.window.click_at(dune);
    CHECK_FALSE(person.state.session.has_preview());
    CHECK(person.state.session.selection.one_piece() == wall::PieceId{"dune"});
    CHECK(person.state.session.kept() == grown);
}

TEST_CASE("Another step of the job shows the wall itself") {
    Planner person;
    person.grow();
    person.window.click("stage/0");
    person.window.key("5");
    CHECK_FALSE(person.state.session.has_preview());
    CHECK_FALSE(person.window.has("stage/0"));
}

TEST_CASE("The play goes through the stages and then asks for no more frames") {
    Planner person;
    person.grow();
    person.window.click("stage/play");
    CHECK(person.waits("dune"));
    CHECK(person.window.ui.memory.wake_in);
    for (int i = 0; i < 4; ++i)
        person.window.rest(1.01F);
    CHECK_FALSE(person.state.session.has_preview());
    person.window.move_to({5, 400});
    person.window.rest(1);
    person.window.ui.memory.wake_in.reset();
    person.window.settle();
    CHECK_FALSE(person.window.ui.memory.wake_in);
}

TEST_CASE("While it searches more frames are asked for, and none after") {
    Planner person;
    person.window.click("suggest/go");
    if (person.state.suggestions.is_running())
        CHECK(person.window.ui.memory.wake_in);
    person.wait();
    person.window.move_to({5, 400});
    person.window.rest(1);
    person.window.ui.memory.wake_in.reset();
    person.window.settle();
    CHECK_FALSE(person.window.ui.memory.wake_in);
}

TEST_CASE("What was found to buy is in sight once the search has come to its end") {
    Planner person(ImVec2{1280, 600});
    person.look();
    REQUIRE(person.window.has("suggest/1"));
    CHECK(person.window.is_in_sight("suggest/1"));
}

TEST_CASE("Growing puts layouts away") {
    Planner person;
    person.state.layouts.options.seconds = 600;
    person.state.layouts.options.rounds = 2;
    person.window.click("layouts/try");
    REQUIRE(person.state.layouts.is_open());
    person.grow();
    CHECK_FALSE(person.state.layouts.is_open());
}

TEST_CASE("The pointer on a suggestion points it out on the wall, and a click wishes for it") {
    Planner person;
    person.look();
    REQUIRE(person.window.has("suggest/1"));
    CHECK(person.window.has("wall/suggest/1"));
    person.window.hover("suggest/1");
    CHECK(person.state.suggestions.pointed_out() == 0U);
    CHECK_FALSE(person.state.session.history().can_undo());
    person.window.click("suggest/1");
    CHECK(person.state.session.kept().pieces.back().wished);
    CHECK(person.state.session.history().undo_label().starts_with("Wish for "));
    CHECK_FALSE(person.window.has("wall/suggest/1"));
    person.window.key("Ctrl+Z");
    CHECK(person.window.has("wall/suggest/1"));
}

TEST_CASE("The pointer on a dashed frame points it out in the list, and away from it none") {
    Planner person;
    person.look();
    const ItemBox frame = person.window.item("wall/suggest/1");
    person.window.move_to(middle(frame));
    CHECK(person.state.suggestions.pointed_out() == 0U);
    const ItemBox canvas = person.window.item("canvas");
    person.window.move_to({canvas.min.x + 5, canvas.min.y + 5});
    CHECK_FALSE(person.state.suggestions.pointed_out());
}

TEST_CASE("Suggestions can be walked through and wished for by keys") {
    Planner person;
    person.look();
    const ItemBox canvas = person.window.item("canvas");
    person.window.move_to({canvas.min.x + 5, canvas.min.y + 5});
    person.window.key("Down");
    CHECK(person.state.suggestions.pointed_out() == 0U);
    person.window.key("Escape");
    CHECK_FALSE(person.state.suggestions.pointed_out());
    person.window.key("Down");
    person.window.key("Enter");
    CHECK(person.state.session.kept().pieces.back().wished);
}

TEST_CASE("Arrow keys are for the selected piece, not for the list of suggestions") {
    Planner person;
    person.grow();
    person.look();
    const ItemBox canvas = person.window.item("canvas");
    person.window.click("wall/dune");
    person.window.move_to({canvas.min.x + 5, canvas.min.y + 5});
    person.window.key("Down");
    CHECK_FALSE(person.state.suggestions.pointed_out());
    CHECK(person.state.session.history().undo_label().starts_with("Move Dune"));
}

TEST_CASE("A wished-for piece says that it is not bought, until it is called so") {
    Planner person;
    person.look();
    person.window.click("suggest/1");
    person.state.session.selection.set(person.state.session.kept().pieces.back().id);
    person.window.settle();
    person.window.click("piece/bought");
    CHECK_FALSE(person.state.session.kept().pieces.back().wished);
    CHECK_FALSE(person.window.has("piece/bought"));
    CHECK(person.state.session.history().undo_label().starts_with("Call "));
}

TEST_CASE("Another wall ends what is searched and put before the person") {
    Planner person;
    person.look();
    person.grow();
    person.window.click("stage/0");
    show(person.state, desk::Session(scenes::wall_of(3000, 2400)));
    person.window.settle();
    CHECK_FALSE(person.window.has("wall/suggest/1"));
    CHECK_FALSE(person.window.has("stage/0"));
    CHECK_FALSE(person.state.session.notice);
}

TEST_CASE("Forgotten stages leave the pieces where they are") {
    Planner person;
    person.grow();
    person.window.click("growth/forget");
    CHECK_FALSE(person.window.has("stage/0"));
    CHECK_FALSE(person.waits("dune"));
    CHECK(person.state.session.history().undo_label() == "Forget the stages");
}

TEST_CASE("Slider and panels are whole and apart in small and large windows and letters") {
    const auto [size, scale] =
        GENERATE(std::pair{ImVec2{1280, 800}, 1.0F}, std::pair{ImVec2{1920, 1080}, 1.0F},
                 std::pair{ImVec2{1920, 1080}, 1.5F});
    Planner person(size, scale);
    person.grow();
    CHECK(person.cut_off("stage/").empty());
    const ItemBox play = person.window.item("stage/play");
    const ItemBox track = person.window.item("stage/track");
    CHECK(play.max.x < track.min.x);
    CHECK(person.window.item("canvas").max.y <= play.min.y);
    CHECK(person.window.item("stage/facts").min.y >= track.max.y);
}
