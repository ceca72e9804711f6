#include "geometry/floor_line.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <vector>

using namespace wallwright::geometry;

namespace {

using P = Point<Wall>;

Polygon mirrored(Polygon outline) {
    const Rect<Wall> all = bounds(outline);
    for (P& corner : outline.corners)
        corner.x = all.min.x + all.max.x - corner.x;
    return outline;
}

/// A floor, `steps` risers up to the right, and a landing; a ceiling with a kink over a tread.
Polygon stair(int steps, double tread, double riser) {
    Polygon outline{{{0, 0}, {1000, 0}}};
    for (int i = 1; i <= steps; ++i) {
        const double x = 1000 + (i - 1) * tread;
        outline.corners.push_back({x, i * riser});
        outline.corners.push_back({i == steps ? x + 1200 : x + tread, i * riser});
    }
    const P last = outline.corners.back();
    outline.corners.push_back({last.x, last.y + 2500});
    outline.corners.push_back({1000 + 1.5 * tread, last.y + 2500});
    outline.corners.push_back({1000 + 1.5 * tread, 2500});
    outline.corners.push_back({0, 2500});
    return outline;
}

}  // namespace

TEST_CASE("A level floor is its own floor line") {
    const FloorLine floor({{{0, 0}, {4000, 0}, {4000, 2500}, {0, 2500}}});
    CHECK(floor.is_level());
    CHECK(floor.pitch() == 0);
    CHECK(floor.at(-10) == 0);
    CHECK(floor.at(1234) == 0);
    CHECK(FloorLine().at(7) == 0);
    CHECK(FloorLine().is_level());
}

// The trade's pitch line, as in BS 5395-1 (from memory): the notional line that connects the
// nosings of the treads of a flight.
TEST_CASE("Over a stair the floor line connects the nosings and goes on to the foot") {
    const FloorLine floor(stair(11, 250, 180));
    CHECK_FALSE(floor.is_level());
    CHECK(floor.pitch() == Approx(180.0 / 250));
    CHECK(floor.at(500) == Approx(0));
    CHECK(floor.at(750) == Approx(0));
    CHECK(floor.at(875) == Approx(90));
    for (int i = 1; i <= 11; ++i)
        CHECK(floor.at(1000 + (i - 1) * 250) == Approx(i * 180));
    CHECK(floor.at(1125) == Approx(270));
    CHECK(floor.at(3600) == Approx(1980));
    CHECK(floor.at(9999) == Approx(1980));
}

TEST_CASE("A stair that goes down has the mirrored floor line") {
    const int steps = GENERATE(3, 4, 11);
    const Polygon up = stair(steps, 260, 170);
    const FloorLine rising(up);
    const FloorLine falling(mirrored(up));
    const Rect<Wall> all = bounds(up);
    for (double x = 3; x < all.max.x; x += 41)
        CHECK(falling.at(all.max.x - x) == Approx(rising.at(x)).margin(1e-6));
    CHECK(falling.pitch() == Approx(-rising.pitch()));
}

TEST_CASE("Two flights with a landing between stay level on it") {
    Polygon outline{{{0, 0}}};
    double x = 500;
    double y = 0;
    for (int flight = 0; flight < 2; ++flight) {
        for (int i = 0; i < 4; ++i) {
            outline.corners.push_back({x, y});
            y += 180;
            outline.corners.push_back({x, y});
            x += i == 3 ? 1000 : 250;
        }
    }
    outline.corners.push_back({x, y});
    outline.corners.push_back({x, y + 2400});
    outline.corners.push_back({0, y + 2400});
    const FloorLine floor(outline);
    CHECK(floor.at(500) == Approx(180));
    CHECK(floor.at(1250) == Approx(720));
    CHECK(floor.at(1900) == Approx(720));
    CHECK(floor.at(2250) == Approx(900));
    CHECK(floor.at(3000) == Approx(1440));
    CHECK(floor.at(3900) == Approx(1440));
}

TEST_CASE("A slope as steep as a stair or a ramp is one flight") {
    const FloorLine ramp({{{0, 0}, {1000, 0}, {3000, 400}, {3000, 2500}, {0, 2500}}});
    CHECK(ramp.at(500) == 0);
    CHECK(ramp.at(2000) == Approx(200));
    CHECK(ramp.pitch() == Approx(0.2));
}

TEST_CASE("What is no stair leaves the floor level at 0") {
    // A step; a doorway cut out, one jamb out of plumb; a counter below the wall; a floor 10 mm out
    // of level over 4 m, as in an old house; two risers.
    const Polygon outlines[] = {
        {{{0, 0}, {1000, 0}, {1000, 250}, {3000, 250}, {3000, 2500}, {0, 2500}}},
        {{{0, 0},
          {1000, 0},
          {1010, 2000},
          {1900, 2000},
          {1900, 0},
          {4000, 0},
          {4000, 2500},
          {0, 2500}}},
        {{{0, 900}, {3000, 900}, {3000, 2500}, {0, 2500}}},
        {{{0, 0}, {4000, 10}, {4000, 2500}, {0, 2500}}},
        {{{0, 0},
          {1000, 0},
          {1000, 180},
          {1250, 180},
          {1250, 360},
          {3000, 360},
          {3000, 2500},
          {0, 2500}}}};
    for (const Polygon& outline : outlines) {
        const FloorLine floor(outline);
        CHECK(floor.is_level());
        CHECK(floor.pitch() == 0);
        CHECK(floor.at(1500) == 0);
    }
}

TEST_CASE("Treads measured a few mm out of level are treads all the same") {
    Polygon outline{{{0, 0}, {1000, 2}}};
    for (int i = 1; i <= 5; ++i) {
        const double x = 1000 + (i - 1) * 250;
        outline.corners.push_back({x, i * 180.0 + (i % 2)});
        outline.corners.push_back({x + 250, i * 180.0 - 3});
    }
    outline.corners.push_back({2250, 3400});
    outline.corners.push_back({0, 3400});
    const FloorLine floor(outline);
    CHECK(floor.pitch() == Approx(0.72).margin(0.01));
    CHECK(floor.at(1500) == Approx(541).margin(1));
}

TEST_CASE("Flights that meet in a narrow valley share its foot") {
    Polygon outline;
    for (int i = 4; i >= 1; --i) {
        outline.corners.push_back({(4 - i) * 250.0, i * 180.0});
        outline.corners.push_back({(5 - i) * 250.0, i * 180.0});
    }
    outline.corners.push_back({1000, 0});
    outline.corners.push_back({1300, 0});
    for (int i = 1; i <= 4; ++i) {
        outline.corners.push_back({1300 + (i - 1) * 250.0, i * 180.0});
        outline.corners.push_back({1300 + i * 250.0, i * 180.0});
    }
    outline.corners.push_back({2300, 3000});
    outline.corners.push_back({0, 3000});
    const FloorLine floor(outline);
    double last = floor.at(0);
    for (double x = 0; x <= 2300; x += 10) {
        CHECK(std::abs(floor.at(x) - last) < 40);
        last = floor.at(x);
    }
    CHECK(floor.at(1000) == Approx(180));
    CHECK(floor.at(1250) == Approx(0).margin(1e-9));
    CHECK(floor.at(1300) == Approx(180));
    CHECK(floor.at(2050) == Approx(720));
}

TEST_CASE("What climbs with the stair has its middle as high over it as each piece has") {
    const FloorLine floor(stair(11, 250, 180));
    std::vector<Rect<Wall>> places;
    for (const double x : {1300.0, 1760.0, 2220.0})
        places.push_back(Rect<Wall>::at({x - 150, floor.at(x) + 1300}, {300, 400}));
    CHECK(middle_above(floor, places) == Approx(1500));
    CHECK(middle_above({}, places) > 1600);
    CHECK(above(floor, places[1]).min.y == Approx(1300));
}
