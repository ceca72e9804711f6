#include "rules/way_clear.h"

#include "rules/judge.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::rules;
using Rect = geometry::Rect<geometry::Wall>;
using Point = geometry::Point<geometry::Wall>;
using Step = geometry::Vec<geometry::Wall>;

namespace {

const geometry::Polygon kWall{{{0, 0}, {3600, 0}, {3600, 2400}, {0, 2400}}};

Rect random_rect() {
    const int left = *rc::gen::inRange(0, 3000);
    const int bottom = *rc::gen::inRange(0, 2000);
    return Rect::at({double(left), double(bottom)},
                    {double(*rc::gen::inRange(1, 600)), double(*rc::gen::inRange(1, 400))});
}

}  // namespace

TEST_CASE("A way is a step of its length in its direction") {
    CHECK(step_of({40, "up"}) == Step{0, 40});
    CHECK(step_of({40, "down"}) == Step{0, -40});
    CHECK(step_of({40, "to the left"}) == Step{-40, 0});
    CHECK(step_of({40, "to the right"}) == Step{40, 0});
}

TEST_CASE("The depth of an overlap is the shortest way apart") {
    const Rect fixed{{1000, 1000}, {1500, 1500}};
    CHECK(overlap_depth({{1450, 1200}, {1900, 1700}}, fixed) == 50);
    CHECK(overlap_depth({{1500, 1200}, {1900, 1700}}, fixed) == 0);
    // One inside the other: out by the nearest side.
    CHECK(overlap_depth({{1200, 1100}, {1300, 1200}}, fixed) == 200);
}

TEST_CASE("The way clear leaves the margin") {
    const Way way =
        way_clear(kWall, {{1450, 1200}, {1900, 1700}}, {{1000, 1000}, {1500, 1500}}, 60);
    CHECK(way.distance == 110);
    CHECK(way.direction == "to the right");
}

TEST_CASE("Where no way ends inside the shortest is named all the same") {
    const Way way = way_clear(kWall, {{100, 100}, {3500, 2300}}, {{200, 200}, {3400, 2200}}, 0);
    CHECK(way.distance == 2100);
    CHECK(way.direction == "up");
}

TEST_CASE("A corner that sticks out under a slope is led down or aside, whichever is less") {
    const geometry::Polygon attic{{{0, 0}, {3600, 0}, {3600, 2400}, {0, 1200}}};
    const std::optional<Way> way = way_inside(attic, {{570, 1000}, {870, 1400}});
    REQUIRE(way.has_value());
    CHECK(way->distance == Approx(10));
    CHECK(way->direction == "down");
}

TEST_CASE("What does not fit has no way inside") {
    CHECK_FALSE(way_inside(kWall, {{-100, 100}, {3700, 200}}).has_value());
}

TEST_CASE("All points of a piece come out of all zones") {
    // The nearest way for the left point alone leads the right point into the second zone.
    const Rect zones[] = {{{1000, 0}, {1100, 2400}}, {{1300, 0}, {1400, 2400}}};
    const Carried carried{{{1000, 1000}, {1400, 1300}}, {{1090, 1200}, {1295, 1200}}};
    const std::optional<Way> way = way_out(kWall, carried, zones);
    REQUIRE(way.has_value());
    CHECK(way->direction == "to the left");
    CHECK(way->distance == 91);
}

TEST_CASE("Points that are in no zone need no way") {
    const Rect zones[] = {{{1000, 0}, {1100, 2400}}};
    const std::optional<Way> way = way_out(kWall, {{{0, 0}, {300, 300}}, {{150, 250}}}, zones);
    REQUIRE(way.has_value());
    CHECK(way->distance == 0);
}

TEST_CASE("The ways named lead where they say") {
    rc::prop("a way clear parts the two", [] {
        const Rect from = random_rect();
        const Rect moving =
            Rect::at(from.centre(), {300, 200})
                .moved({double(*rc::gen::inRange(-299, 1)), double(*rc::gen::inRange(-199, 1))});
        const Way way = way_clear(kWall, moving, from, 0);
        RC_ASSERT(overlap_depth(moving.moved(step_of(way)), from) == 0);
        RC_ASSERT(way.distance >= overlap_depth(moving, from));
    });
    rc::prop("a way inside ends inside but for a hair", [] {
        const Rect place = random_rect().moved(
            {double(*rc::gen::inRange(-500, 1500)), double(*rc::gen::inRange(-500, 1500))});
        RC_PRE(geometry::protrusion(kWall, place) > kHair);
        const std::optional<Way> way = way_inside(kWall, place);
        if (way)
            RC_ASSERT(geometry::protrusion(kWall, place.moved(step_of(*way))) <= kHair + 1e-9);
    });
    rc::prop("a way out of zones leaves none of them touched", [] {
        const std::vector<Rect> zones{random_rect(), random_rect(), random_rect()};
        const Rect place = random_rect();
        const Carried carried{place, {place.centre(), {place.left(), place.top()}}};
        const std::optional<Way> way = way_out(kWall, carried, zones);
        if (!way)
            return;
        RC_ASSERT(geometry::contains(kWall, place.moved(step_of(*way))));
        for (const Point point : carried.points)
            for (const Rect& zone : zones)
                RC_ASSERT_FALSE(zone.contains(point + step_of(*way)));
    });
}
