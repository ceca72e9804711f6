#include "arrange/standing.h"

#include "growing.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::arrange;

namespace {

Task task_for(const wall::Project& project) {
    return task_of(project, scenes::small_catalogue(), Free::waiting_alone);
}

}  // namespace

TEST_CASE("What hangs far apart is two groups, from left to right") {
    wall::Project project = growing::row_over_sofa(1);
    scenes::add_hung(project, "aside", {100, 1400}, {200, 200});
    const auto groups = standing_groups(task_for(project));
    REQUIRE(groups.size() == 2);
    CHECK(groups[0].size() == 1);
    CHECK(groups[1].size() == 3);
}

TEST_CASE("The distance to a layout is that to its nearest piece") {
    const Layout two{{0, WallRect::at({0, 0}, {100, 100})},
                     {1, WallRect::at({500, 0}, {100, 100})}};
    CHECK(distance_between(two, WallRect::at({640, 20}, {50, 50})) == Approx(40));
    CHECK(distance_between(two, WallRect::at({130, 140}, {50, 50})) == Approx(50));
}

TEST_CASE("A place leads on by its share of the way to within the gap of the target") {
    Task task;
    task.gap = 60;
    const Layout pieces{{0, WallRect::at({0, 0}, {100, 100})}};
    const WallRect target = WallRect::at({1160, 0}, {100, 100});
    const auto led = [&](double x) {
        return leads_on(task, pieces, WallRect::at({x, 0}, {100, 100}), target);
    };
    CHECK(led(250) == Approx(0.25));
    CHECK(led(1000) == 1);
    CHECK(led(1030) == 1);
    CHECK(led(-160) == 0);
    CHECK(leads_on(task, pieces, WallRect::at({250, 0}, {100, 100}), std::nullopt) == 0);
    const WallRect reached = WallRect::at({160, 0}, {100, 100});
    CHECK(leads_on(task, pieces, WallRect::at({160, 0}, {100, 100}), reached) == 0);
}

TEST_CASE("A place touches where it faces a piece at the gap by a quarter of the shorter side") {
    const Task task = task_for(growing::row_over_sofa(0));
    const Layout fixed = fixed_part(task);  // from 1000 to 2220 and 1300 to 1700
    const auto at = [&](double x, double y) {
        return touches(task, fixed, WallRect::at({x, y}, {200, 200}));
    };
    CHECK(at(2280, 1400));
    CHECK(at(1100, 1760));
    CHECK_FALSE(at(2290, 1400));
    CHECK(at(2280, 1650));
    CHECK_FALSE(at(2280, 1651));
    CHECK_FALSE(at(2280, 1760));
}

TEST_CASE("A place sinks below the furniture from the clearance down to its top") {
    const std::vector<Beneath> sofa{
        {"Sofa", WallRect::at({700, 0}, {2000, 800}), 150, 255, 0.6, 0.75}};
    const auto at = [&](double y) {
        return sunk_below_furniture(sofa, WallRect::at({3000, y}, {200, 200}));
    };
    CHECK(at(1000) == 0);
    CHECK(at(950) == 0);
    CHECK(at(875) == Approx(0.5));
    CHECK(at(300) == 1);
    CHECK(sunk_below_furniture(sofa, WallRect::at({3300, 300}, {200, 200})) == 0);
    CHECK(sunk_below_furniture({}, WallRect::at({0, 0}, {1, 1})) == 0);
}
