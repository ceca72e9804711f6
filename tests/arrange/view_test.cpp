#include "arrange/view.h"

#include "arrange/mixed_wall.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::arrange;

TEST_CASE("Only groups with a free piece are looked at") {
    wall::Project project = scenes::wall_of(8000, 2600);
    scenes::add_hung(project, "far", {200, 1300}, {300, 400});
    scenes::add_hung(project, "near", {4000, 1300}, {300, 400});
    scenes::add_waiting(project, "free", {300, 400});
    const Task task = task_for(project);
    Layout layout = fixed_part(task);
    CHECK(View(task, layout).size() == 2);
    CHECK(View(task, layout).groups() == 2);
    layout.push_back({2, WallRect::at({4360, 1300}, {300, 400})});
    const View view(task, layout);
    REQUIRE(view.size() == 2);
    CHECK(view.groups() == 1);
    CHECK(view.item(0).id.text == "near");
    REQUIRE(view.facing().size() == 1);
    CHECK(view.facing()[0].first == 0);
    CHECK(view.facing()[0].second == 1);
    CHECK(view.bounds().left() == 4000);
    CHECK(view.bounds().right() == 4660);
    CHECK(view.area() == 2 * 300 * 400);
    CHECK(view.mass().x == Approx(4330));
}

TEST_CASE("Corners nearer than the gap are told apart from exact ones") {
    const Task task = task_for(mixed_wall(2, 1));
    const auto corners = [&task](double x) {
        const Layout layout{{0, WallRect::at({2000, 1300}, {300, 300})},
                            {1, WallRect::at({2300 + x, 1600 + x}, {300, 300})}};
        return View(task, layout).corners().size();
    };
    CHECK(corners(59) == 1);
    CHECK(corners(60) == 0);
}
