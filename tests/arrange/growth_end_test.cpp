#include "arrange/growth_end.h"

#include "growing.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::arrange;

namespace {

struct Ended {
    GrowthEnd end;
    std::string words;
};

Ended ended(const wall::Project& project, const std::function<bool(double)>& go_on) {
    const Task task = task_of(project, scenes::small_catalogue(), Free::waiting_alone);
    GrowOptions options;
    options.seconds = 1e6;
    options.rounds = 2;
    const Growth growth =
        grow(task, place_of(project.room, project.target.value()).value(), options, go_on);
    const GrowthEnd end = end_of(project, task, growth);
    return {end, words_of(end, project, growth, project.unit)};
}

Ended ended(const wall::Project& project) {
    return ended(project, [](double) { return true; });
}

/// growing::row_over_sofa with so many pieces that wait, growing toward the lamp.
wall::Project toward_the_lamp(int waiting) {
    wall::Project project = growing::row_over_sofa(waiting);
    project.target = wall::FurnitureId{"lamp"};
    return project;
}

/// A window as high as the wall right of the row, 2220 mm from the left.
wall::Project with_window(wall::Project project) {
    scenes::add_fixture(project, wall::FixtureType::window, WallRect::at({2300, 0}, {800, 2600}))
        .title = "Window 2";
    return project;
}

}  // namespace

TEST_CASE("A window between the group and the target is named with the way that is left") {
    const Ended said = ended(with_window(toward_the_lamp(4)));
    REQUIRE(said.end.in_the_way);
    CHECK_FALSE(said.end.in_the_way->fits_before);
    CHECK(said.words == "Growth stops 1780 mm before the lamp: Window 2 is in the way.");
}

TEST_CASE("A growth that ran out of pieces blames nothing that it had room before") {
    wall::Project project = toward_the_lamp(1);
    CHECK(ended(project).words.ends_with(" before the lamp: every waiting piece is up."));
    scenes::add_fixture(project, wall::FixtureType::window, WallRect::at({3200, 0}, {300, 2600}))
        .title = "Window 2";
    CHECK(ended(project).words.ends_with(
        ": every waiting piece is up; farther on, Window 2 is in the way."));
}

TEST_CASE("A growth that has reached its target has nothing to say") {
    wall::Project project = growing::row_over_sofa(2);
    project.target = wall::Target(WallPoint{1500, 1350});
    const Ended said = ended(project);
    CHECK(said.end.reached);
    CHECK(said.words.empty());
}

TEST_CASE("Over furniture the group has reached it at the height that pieces hang over it") {
    wall::Project project = growing::row_over_sofa(1);
    project.target = wall::FurnitureId{"sofa"};
    project.style.clearance_most = 500;  // the row hangs 500 mm over it
    CHECK(ended(project).end.reached);
    project.target = wall::Target(WallRect::at({700, 0}, {2000, 800}));
    CHECK_FALSE(ended(project).end.reached);
}

TEST_CASE("A group that hangs aside is in the way of the one that grows") {
    wall::Project project = toward_the_lamp(2);
    scenes::add_hung(project, "aside", {2480, 850}, {400, 1600});
    for (int i = 0; i < 2; ++i)
        scenes::add_hung(project, "more" + std::to_string(i), {1000 + 360.0 * i, 1760}, {300, 300});
    project.target = wall::Target(WallPoint{3600, 1500});
    // The larger group counts, though the single piece is nearer.
    CHECK(ended(project).words.ends_with(": Aside is in the way."));
}

TEST_CASE("A cable zone is in the way of a piece whose screw would go into it") {
    wall::Project project = scenes::wall_of(4000, 2600);
    scenes::add_hung(project, "kelp", {1000, 1300}, {300, 400});
    wall::Piece& next = scenes::add_waiting(project, "dune", {300, 300});
    next.hanger.type = wall::HangerType::sawtooth;
    next.fixing = wall::FixingTypeId{"screw"};
    // Its middle would be 1510 mm from the left, in line with the switch.
    scenes::add_fixture(project, wall::FixtureType::light_switch,
                        WallRect::at({1470, 300}, {80, 80}));
    project.target = wall::Target(WallPoint{3500, 1500});
    const Task task = task_of(project, scenes::small_catalogue(), Free::waiting_alone);
    Growth nothing;
    nothing.left_out = {{"dune"}};
    const GrowthEnd end = end_of(project, task, nothing);
    REQUIRE(end.in_the_way);
    CHECK(end.in_the_way->title.find("the cable zone ") == 0);
    project.pieces.back().hanger.type = wall::HangerType::strips;
    project.pieces.back().fixing.reset();
    CHECK_FALSE(
        end_of(project, task_of(project, scenes::small_catalogue(), Free::waiting_alone), nothing)
            .in_the_way);
}

TEST_CASE("The heat above a radiator is in the way, not only the radiator") {
    wall::Project project = toward_the_lamp(1);
    scenes::add_fixture(project, wall::FixtureType::radiator,
                        WallRect::at({2300, 200}, {800, 1000}));
    project.style.heat_above = 600;
    Growth nothing;
    nothing.left_out = {{"new1"}};
    const Task task = task_of(project, scenes::small_catalogue(), Free::waiting_alone);
    const GrowthEnd end = end_of(project, task, nothing);
    REQUIRE(end.in_the_way);
    CHECK(end.in_the_way->title == "the heat above the radiator");
}

TEST_CASE("Of a growth that was stopped nothing is said to be in the way") {
    const Ended said = ended(with_window(toward_the_lamp(4)), [](double) { return false; });
    CHECK_FALSE(said.end.in_the_way);
    CHECK(said.words.empty());
}
