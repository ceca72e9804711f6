#include "draw/backdrop.h"

#include "draw/looking.h"
#include "support/gallery.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Polygon;
using geometry::Rect;
using geometry::Wall;

TEST_CASE("A level floor is one line from wall to wall") {
    const Polygon outline{{{0, 0}, {3000, 0}, {3000, 2400}, {0, 2400}}};
    const auto floor = floor_line(outline);
    REQUIRE(floor.size() == 2);
    CHECK(floor[0].x == Approx(0));
    CHECK(floor[1].x == Approx(3000));
    CHECK(floor[0].y == Approx(0).margin(0.01));
}

TEST_CASE("The floor climbs a stair step by step") {
    const wall::Project project = scenes::stair_gallery();
    const auto floor = floor_line(project.room.outline);
    REQUIRE(floor.size() > 16);
    CHECK(floor.front().y == Approx(0).margin(0.01));
    CHECK(floor.back().y == Approx(1440).margin(0.01));
    for (std::size_t i = 1; i < floor.size(); ++i) {
        CHECK(floor[i].x >= floor[i - 1].x - 1e-9);
        CHECK(floor[i].y >= floor[i - 1].y - 0.01);
    }
}

TEST_CASE("A zone is cut off where a sloping ceiling ends the wall") {
    const Polygon outline{{{0, 0}, {1000, 0}, {1000, 1000}, {0, 2000}}};
    const auto part = part_on_wall(outline, {{0, 900}, {1000, 2100}});
    const Polygon polygon{part};
    // Between the slope and the level at 900: a trapezium 1100 and 100 high and 1000 wide.
    CHECK(geometry::area(polygon) == Approx(600000));
    CHECK(part_on_wall(outline, {{2000, 0}, {3000, 100}}).empty());
}

TEST_CASE("A rectangle inside the wall is kept whole") {
    rc::prop("as to its area", []() {
        const double x = *rc::gen::inRange(0, 2000);
        const double y = *rc::gen::inRange(0, 1500);
        const double width = *rc::gen::inRange(1, 900);
        const double height = *rc::gen::inRange(1, 800);
        const Polygon outline{{{0, 0}, {3000, 0}, {3000, 2400}, {0, 2400}}};
        const Polygon part{part_on_wall(outline, Rect<Wall>::at({x, y}, {width, height}))};
        RC_ASSERT(std::abs(geometry::area(part) - width * height) < 1e-6);
    });
}

TEST_CASE("Cable zones are one hatch, so that where two meet it is no darker") {
    wall::Project project = scenes::attic_gallery();
    const auto hatches = test::shapes_in<Hatch<Wall>>(test::drawn(project).shapes);
    REQUIRE(hatches.size() == 1);
    CHECK(hatches[0].areas.size() > 5);
    ElevationOptions plain;
    plain.zones = false;
    CHECK(test::shapes_in<Hatch<Wall>>(test::drawn(project, plain).shapes).empty());
}

TEST_CASE("A dark wall is drawn as a pale wash") {
    wall::Project project = scenes::wall_of(3000, 2400);
    project.room.colour = {0x10, 0x18, 0x30};
    const auto paths = test::shapes_in<Path<Wall>>(test::drawn(project).shapes);
    REQUIRE(paths.front().fill);
    CHECK(paths.front().fill->colour.red > 0xC0);
}
