#include "person.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::app;

TEST_CASE("A notice stays in the status bar until it is put away") {
    Person person(scenes::wall_of(3600, 2400));
    CHECK_FALSE(person.window.has("status/notice"));
    person.state.session.notice = desk::Notice{true, "Kelp is pinned; unpin it first."};
    person.window.settle();
    CHECK(person.window.has("status/notice"));
    person.window.click("status/put-away");
    CHECK_FALSE(person.state.session.notice);
    CHECK_FALSE(person.window.has("status/notice"));
}

TEST_CASE("A problem goes with the next step of the work and with another view, a notice stays") {
    Person person(scenes::wall_of(3600, 2400));
    State& state = person.state;
    person.work();
    const auto told = [&](bool is_problem) {
        state.session.notice = desk::Notice{is_problem, "Kelp is pinned; unpin it first."};
        person.window.settle();
        return state.session.notice.has_value();
    };
    CHECK(told(true));
    person.window.key("Ctrl+Z");
    CHECK_FALSE(state.session.notice);
    CHECK(told(true));
    person.window.key("3");
    CHECK_FALSE(state.session.notice);
    CHECK(told(true));
    person.window.click("bench/view-card");
    CHECK_FALSE(state.session.notice);
    CHECK(told(false));
    person.window.key("4");
    CHECK(state.session.notice);
}

TEST_CASE("A problem that comes with another step is told") {
    Person person(scenes::wall_of(3600, 2400));
    person.state.step = desk::Step::room;
    person.state.session.notice = desk::Notice{true, "The file holds a key that is not known."};
    person.window.settle();
    CHECK(person.window.has("status/notice"));
}

TEST_CASE("Nothing in the status bar overlaps or is cut off, however long the notice") {
    const float width = GENERATE(1000.F, 1920.F);  // The bar has half of the first.
    const float scale = GENERATE(1.F, 2.F);
    Person person(scenes::wall_of(3600, 2400), {width, 800}, scale);
    person.window.move_to({60, 300});
    person.state.session.notice = desk::Notice{
        true,
        "frames.csv:4: \"three hundred\" is no length; write it like 300, 30 cm or 12 in\n"
        "kelp,three hundred,400\n     ^"};
    person.window.settle();
    CAPTURE(width, scale);
    CHECK(person.window.has("status/notice"));
    CHECK(person.window.has("status/place"));
    CHECK(person.overlaps("status/") == std::vector<std::string>{});
    CHECK(person.cut_off("status/") == std::vector<std::string>{});
}

TEST_CASE("Where the pointer is shows only while it is over the wall") {
    Person person(scenes::wall_of(3600, 2400));
    CHECK_FALSE(person.window.has("status/place"));
    person.window.move_to({400, 300});
    CHECK(person.window.has("status/place"));
    CHECK(person.window.has("status/facts"));
}
