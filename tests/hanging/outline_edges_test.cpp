#include "hanging/outline_edges.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

namespace wallwright::hanging {

namespace {

using geometry::Point;
using geometry::Polygon;
using geometry::Segment;
using geometry::Wall;

bool is(const Segment<Wall>& side, Point<Wall> from, Point<Wall> to) {
    return side.from == from && side.to == to;
}

/// Two steps of a stair at the right under a level ceiling.
Polygon stair() {
    return {{{0, 0},
             {1000, 0},
             {1000, 200},
             {2000, 200},
             {2000, 400},
             {3000, 400},
             {3000, 2600},
             {0, 2600}}};
}

}  // namespace

TEST_CASE("A flat wall has one ceiling, one floor and two ends, whichever way round it is drawn") {
    Polygon outline = scenes::wall_of(3600, 2400).room.outline;
    if (GENERATE(false, true))
        std::reverse(outline.corners.begin(), outline.corners.end());
    const OutlineEdges edges = edges_of(outline);
    REQUIRE(edges.ceiling.size() == 1);
    CHECK(is(edges.ceiling[0], {0, 2400}, {3600, 2400}));
    REQUIRE(edges.floor.size() == 1);
    CHECK(is(edges.floor[0], {0, 0}, {3600, 0}));
    REQUIRE(edges.ends.size() == 2);
    for (const Segment<Wall>& end : edges.ends) {
        CHECK(end.from.y == 0);
        CHECK(end.to.y == 2400);
    }
}

TEST_CASE("The treads of a stair are floor and its risers are no ends") {
    const OutlineEdges edges = edges_of(stair());
    CHECK(edges.floor.size() == 3);
    CHECK(edges.ceiling.size() == 1);
    CHECK(edges.ends.size() == 2);
}

TEST_CASE("A gable has a ceiling of two slopes and no ends") {
    const OutlineEdges edges = edges_of({{{0, 0}, {4000, 0}, {2000, 3000}}});
    CHECK(edges.ceiling.size() == 2);
    CHECK(edges.floor.size() == 1);
    CHECK(edges.ends.empty());
}

TEST_CASE("A level side is one rectangle and a slope is steps no higher than asked") {
    CHECK(steps_along({{0, 2400}, {3600, 2400}}, 25).size() == 1);
    const auto steps = steps_along({{0, 1200}, {1000, 2230}}, 25);
    REQUIRE(steps.size() == 42);
    CHECK(steps.front().min == Point<Wall>{0, 1200});
    CHECK(steps.back().max == Point<Wall>{1000, 2230});
    for (std::size_t i = 0; i < steps.size(); ++i) {
        CHECK(steps[i].height() <= 25);
        if (i > 0)
            CHECK(steps[i].left() == steps[i - 1].right());
    }
}

TEST_CASE("The height over a stretch is that of its lowest floor and highest ceiling") {
    const auto over_ridge = height_between({{{0, 0}, {4000, 0}, {2000, 3000}}}, 1500, 2500);
    REQUIRE(over_ridge);
    CHECK(over_ridge->low == 0);
    CHECK(over_ridge->high == Approx(3000));
    const auto on_tread = height_between(stair(), 1200, 1800);
    REQUIRE(on_tread);
    CHECK(on_tread->low == Approx(200));
    CHECK_FALSE(height_between(stair(), 3100, 3200));
}

TEST_CASE("The width between two heights is that of the wall there") {
    const auto across = width_between({{{0, 0}, {4000, 0}, {2000, 3000}}}, 1500, 1800);
    REQUIRE(across);
    CHECK(across->low == Approx(1000));
    CHECK(across->high == Approx(3000));
    CHECK_FALSE(width_between(stair(), 2700, 2800));
}

}  // namespace wallwright::hanging
