#include "hanging/zones.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Wall;
using wall::CablePractice;
using wall::FixtureType;
using wall::Room;

constexpr Rect<Wall> kSwitch{{1000, 1050}, {1080, 1130}};
constexpr Rect<Wall> kDoor{{2000, 0}, {2900, 2050}};

Room room_of(CablePractice practice) {
    Room room = scenes::wall_of(3600, 2400).room;
    room.cable_practice = practice;
    return room;
}

void add(Room& room, FixtureType type, Rect<Wall> place) {
    wall::Fixture fixture;
    fixture.type = type;
    fixture.place = place;
    room.fixtures.push_back(fixture);
}

bool in_zone(const Room& room, Point<Wall> point) {
    const std::vector<Zone> zones = cable_zones(room);
    return std::any_of(zones.begin(), zones.end(),
                       [&](const Zone& zone) { return zone.place.contains(point); });
}

std::vector<Rect<Wall>> places(const Room& room, const std::string& why) {
    std::vector<Rect<Wall>> found;
    for (const Zone& zone : cable_zones(room))
        if (zone.why == why)
            found.push_back(zone.place);
    return found;
}

}  // namespace

// BS 7671 regulation 522.6.202(i), as quoted by electricians: within 150 mm of the top of the wall,
// within 150 mm of an angle formed by two adjoining walls, or level or upright in line with an
// accessory (its own width: from memory).
TEST_CASE("British zones run along the top, down both corners and in line with the switch") {
    Room room = room_of(CablePractice::bs_7671);
    add(room, FixtureType::light_switch, kSwitch);
    CHECK(places(room, "within 150 mm of the top of the wall") ==
          std::vector{Rect<Wall>{{0, 2250}, {3600, 2400}}});
    CHECK(places(room, "within 150 mm of a corner of the room") ==
          std::vector{Rect<Wall>{{3450, 0}, {3600, 2400}}, Rect<Wall>{{0, 0}, {150, 2400}}});
    CHECK(places(room, "straight above or below the switch") ==
          std::vector{Rect<Wall>{{1000, 0}, {1080, 2400}}});
    CHECK(places(room, "level with the switch") ==
          std::vector{Rect<Wall>{{0, 1050}, {3600, 1130}}});
    CHECK(cable_zones(room).size() == 5);
    for (const Zone& zone : cable_zones(room))
        CHECK(zone.source == "BS 7671 522.6.202(i)");
}

TEST_CASE("There is no British zone along the floor") {
    CHECK_FALSE(in_zone(room_of(CablePractice::bs_7671), {1800, 100}));
}

// DIN 18015-3:2016-09 as quoted by building sites: level zones 150 to 450 mm below the ceiling and
// above the floor; upright zones 100 to 300 mm from the edges of doors, windows and corners.
TEST_CASE(
    "German zones run below the ceiling, above the floor and beside doors, windows and corners") {
    Room room = room_of(CablePractice::din_18015_3);
    add(room, FixtureType::door, kDoor);
    add(room, FixtureType::window, {{800, 900}, {1600, 2100}});
    CHECK(places(room, "150 to 450 mm below the ceiling") ==
          std::vector{Rect<Wall>{{0, 1950}, {3600, 2250}}});
    CHECK(places(room, "150 to 450 mm above the floor") ==
          std::vector{Rect<Wall>{{0, 150}, {3600, 450}}});
    CHECK(places(room, "100 to 300 mm beside the door") ==
          std::vector{Rect<Wall>{{1700, 0}, {1900, 2400}}, Rect<Wall>{{3000, 0}, {3200, 2400}}});
    CHECK(places(room, "100 to 300 mm beside the window") ==
          std::vector{Rect<Wall>{{500, 0}, {700, 2400}}, Rect<Wall>{{1700, 0}, {1900, 2400}}});
    CHECK(places(room, "100 to 300 mm beside a corner of the room") ==
          std::vector{Rect<Wall>{{3300, 0}, {3500, 2400}}, Rect<Wall>{{100, 0}, {300, 2400}}});
    for (const Zone& zone : cable_zones(room))
        CHECK(zone.source == "DIN 18015-3:2016-09");
}

// DIN 18015-3 as quoted: 1000 to 1300 mm above the floor, in kitchens and workrooms only.
TEST_CASE("The German middle zone is in kitchens only") {
    Room room = room_of(CablePractice::din_18015_3);
    const std::string why = "1000 to 1300 mm above the floor of a kitchen";
    CHECK(places(room, why).empty());
    room.use = wall::RoomUse::kitchen;
    CHECK(places(room, why) == std::vector{Rect<Wall>{{0, 1000}, {3600, 1300}}});
}

TEST_CASE(
    "A zone that would lie beside the wall is left out and one that reaches over its end is cut "
    "off") {
    Room room = room_of(CablePractice::din_18015_3);
    add(room, FixtureType::door, {{200, 0}, {3580, 2050}});
    CHECK(places(room, "100 to 300 mm beside the door") ==
          std::vector{Rect<Wall>{{0, 0}, {100, 2400}}});
}

TEST_CASE(
    "Where no practice is known, sockets and switches still warn above, below and beside "
    "themselves") {
    Room room = room_of(CablePractice::none_known);
    CHECK(cable_zones(room).empty());
    add(room, FixtureType::socket, {{500, 260}, {580, 340}});
    add(room, FixtureType::radiator, {{1500, 100}, {2300, 700}});
    room.fixtures.front().title = "left socket";
    CHECK(places(room, "straight above or below the socket \"left socket\"").size() == 1);
    CHECK(places(room, "level with the socket \"left socket\"").size() == 1);
    CHECK(cable_zones(room).size() == 2);
    CHECK(cable_zones(room).front().source == "common practice, no source");
}

// BS 7671 522.6.202(i) and IET On-Site Guide 7.3.2: the zones of an accessory reach through a wall
// of 100 mm or less to its other side.
TEST_CASE("A switch in the room behind counts through a thin wall, and through one unmeasured") {
    Room room = room_of(GENERATE(CablePractice::none_known, CablePractice::bs_7671));
    add(room, FixtureType::light_switch, kSwitch);
    room.fixtures.front().other_side = true;
    const Point<Wall> above{1040, 1700};
    CHECK(in_zone(room, above));
    room.thickness = 100;
    CHECK(in_zone(room, above));
    CHECK(places(room, "straight above or below the switch in the room behind").size() == 1);
    room.thickness = 101;
    CHECK_FALSE(in_zone(room, above));
    room.fixtures.front().other_side = false;
    CHECK(in_zone(room, above));
}

TEST_CASE("A door in the room behind has no zones in this one") {
    Room room = room_of(CablePractice::din_18015_3);
    add(room, FixtureType::door, kDoor);
    room.fixtures.front().other_side = true;
    CHECK(places(room, "100 to 300 mm beside the door").empty());
}

TEST_CASE("A nail straight below a switch is in a zone under every practice") {
    Room room = room_of(
        GENERATE(CablePractice::none_known, CablePractice::bs_7671, CablePractice::din_18015_3));
    add(room, FixtureType::light_switch, kSwitch);
    CHECK(in_zone(room, {1040, 700}));
    CHECK_FALSE(in_zone(room, {1200, 700}));
}

TEST_CASE("Under a sloping ceiling an upright zone ends at the ceiling above it") {
    Room room = scenes::attic_of(4000, 1000, 3000).room;
    add(room, FixtureType::socket, {{1960, 260}, {2040, 340}});
    const auto upright = places(room, "straight above or below the socket");
    REQUIRE(upright.size() == 1);
    CHECK(upright.front().top() == Approx(2020));
    CHECK(upright.front().bottom() == 0);
}

TEST_CASE("Under a roof of 45 degrees 150 mm square to it are 212 mm straight down") {
    Room room = scenes::attic_of(3000, 500, 3500).room;
    room.cable_practice = CablePractice::bs_7671;
    CHECK(in_zone(room, {1500, 2000 - 210}));
    CHECK_FALSE(in_zone(room, {1500, 2000 - 300}));
    std::swap(room.outline.corners[2].y, room.outline.corners[3].y);
    CHECK(in_zone(room, {1500, 2000 - 210}));
    CHECK_FALSE(in_zone(room, {1500, 2000 - 300}));
}

TEST_CASE("The British zone follows a sloping ceiling and misses no point within 150 mm of it") {
    rc::prop("for any slope", [] {
        const double left = *rc::gen::inRange(800, 3000);
        const double right = *rc::gen::inRange(800, 3000);
        Room room = scenes::attic_of(4000, left, right).room;
        room.cable_practice = CablePractice::bs_7671;
        const double x = *rc::gen::inRange(0, 4001);
        const double below = *rc::gen::inRange(0, 800);
        const Point<Wall> point{x, left + (right - left) * x / 4000 - below};
        // The distance from a point to a line, by its angle.
        const double distance = below * std::cos(std::atan2(right - left, 4000));
        if (distance <= 150 || x <= 150 || x >= 3850)
            RC_ASSERT(in_zone(room, point));
        // Steps of 25 mm cover no more than two of them too much.
        else if (distance > 200)
            RC_ASSERT(!in_zone(room, point));
    });
}

TEST_CASE("The German zones follow ceiling and stair, upright measured") {
    Room room;
    room.cable_practice = CablePractice::din_18015_3;
    room.outline = {{{0, 0}, {2000, 0}, {2000, 400}, {4000, 400}, {4000, 3000}, {0, 2000}}};
    CHECK(in_zone(room, {1000, 300}));
    CHECK(in_zone(room, {3000, 700}));
    CHECK_FALSE(in_zone(room, {3000, 500}));
    CHECK(in_zone(room, {1000, 2250 - 300}));
    CHECK(in_zone(room, {3000, 2750 - 300}));
    CHECK_FALSE(in_zone(room, {3000, 2750 - 600}));
}

}  // namespace wallwright::hanging
