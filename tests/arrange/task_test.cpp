#include "arrange/mixed_wall.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::arrange;

TEST_CASE("The bounds of spots hold them all") {
    const Layout two{{0, WallRect::at({0, 50}, {100, 100})}, {1, WallRect::at({500, 0}, {60, 80})}};
    CHECK(bounds_of(two) == WallRect{{0, 0}, {560, 150}});
    CHECK(bounds_of(Layout{two.back()}) == two.back().place);
}

TEST_CASE("The layout of a project has what is on the wall, numbered as the task does") {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_waiting(project, "dune", {500, 400});
    scenes::add_piece(project, "kelp", {1000, 1300}, {300, 400});
    CHECK(layout_of(project) == Layout{{1, WallRect::at({1000, 1300}, {300, 400})}});
    CHECK(task_for(project).items[1].id == wall::PieceId{"kelp"});
}

TEST_CASE("Hung and pinned pieces stay, planned and waiting ones are free") {
    wall::Project project = scenes::wall_of(4000, 2500);
    scenes::add_hung(project, "hung", {500, 1300}, {300, 400});
    scenes::add_piece(project, "planned", {900, 1300}, {300, 400});
    scenes::add_piece(project, "pinned", {1300, 1300}, {300, 400}).pinned = true;
    scenes::add_waiting(project, "waiting", {300, 400});
    const auto free_of = [&project](Free free) {
        return free_items(task_of(project, scenes::small_catalogue(), free));
    };
    CHECK(free_of(Free::all_unfixed) == std::vector<std::uint32_t>{1, 3});
    CHECK(free_of(Free::waiting_alone) == std::vector<std::uint32_t>{3});
}

TEST_CASE(
    "The furniture that the group reads with is the one below what stays, or else the widest") {
    wall::Project project = scenes::wall_of(6000, 2500);
    scenes::add_furniture(project, wall::FurnitureType::sofa, WallRect::at({0, 0}, {2000, 800}));
    scenes::add_furniture(project, wall::FurnitureType::table,
                          WallRect::at({4000, 0}, {1000, 750}));
    scenes::add_furniture(project, wall::FurnitureType::plant, WallRect::at({2500, 0}, {900, 900}));
    scenes::add_waiting(project, "kelp", {300, 400});
    CHECK(task_for(project).beneath->place.left() == 0);
    scenes::add_hung(project, "gull", {4200, 1300}, {300, 400});
    CHECK(task_for(project).beneath->place.left() == 4000);
}

TEST_CASE("A piece may not be outside, behind furniture, over what it is to stay off") {
    wall::Project project = mixed_wall(1, 1);
    project.wishes.push_back({wall::WishKind::not_over, project.pieces[0].id, std::nullopt,
                              wall::ThingId(wall::FurnitureId{"sofa"})});
    Task task = task_for(project);
    task.items[0].size = {300, 400};
    const auto allowed = [&task](double x, double y) {
        return wall_allows(task, 0, WallRect::at({x, y}, {300, 400}));
    };
    CHECK(allowed(1150, 1300));
    CHECK_FALSE(allowed(1151, 1300));
    CHECK_FALSE(allowed(3549, 1300));
    CHECK(allowed(3550, 1300));
    CHECK_FALSE(allowed(-1, 1300));
    CHECK_FALSE(allowed(100, 2201));
    task.items[0].not_over.clear();
    CHECK(allowed(1151, 1300));
    CHECK_FALSE(allowed(1500, 500));
}

TEST_CASE("Where cables should run only a piece on strips may be") {
    wall::Project project = scenes::wall_of(4000, 2500);
    project.room.cable_practice = wall::CablePractice::bs_7671;
    scenes::add_fixture(project, wall::FixtureType::light_switch,
                        WallRect::at({2000, 1100}, {86, 86}));
    scenes::add_waiting(project, "strips", {300, 400});
    scenes::add_waiting(project, "hook", {300, 400}).hanger.type = wall::HangerType::sawtooth;
    const Task task = task_for(project);
    REQUIRE(task.items[0].pierces.empty());
    REQUIRE(task.items[1].pierces.size() == 1);
    const auto over_switch = WallRect::at({1893, 1400}, {300, 400});
    const auto aside = WallRect::at({1500, 1400}, {300, 400});
    CHECK(wall_allows(task, 0, over_switch));
    CHECK_FALSE(wall_allows(task, 1, over_switch));
    CHECK(wall_allows(task, 1, aside));
}

TEST_CASE("Two pieces are clear of each other from the gap on, along one axis") {
    Task task;
    task.gap = 60;
    const auto one = WallRect::at({0, 0}, {300, 400});
    CHECK(clear_of_each_other(task, one, WallRect::at({360, 0}, {300, 400})));
    CHECK_FALSE(clear_of_each_other(task, one, WallRect::at({359, 0}, {300, 400})));
    CHECK_FALSE(clear_of_each_other(task, one, WallRect::at({350, 450}, {300, 400})));
    CHECK(clear_of_each_other(task, one, WallRect::at({350, 460}, {300, 400})));
}
