#include "arrange/keep_out.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>

using namespace wallwright;
using namespace wallwright::wall;
using arrange::keep_outs;

namespace {

Room room_with(Polygon outline) {
    Room room;
    room.outline = std::move(outline);
    return room;
}

const Polygon kAttic{{{0, 0}, {4000, 0}, {4000, 1200}, {2500, 2400}, {0, 2400}}};
const Polygon kStair{{{0, 0}, {1000, 0}, {1000, 500}, {2000, 500}, {2000, 3000}, {0, 3000}}};

bool is_kept_out(const Room& room, const Rect<Wall>& place) {
    const auto all = keep_outs(room);
    return std::any_of(all.begin(), all.end(), [&place](const spacing::Obstacle& one) {
        return geometry::overlaps(one.place, place);
    });
}

}  // namespace

TEST_CASE("A frame clear of every keep-out is inside the wall") {
    for (const Polygon& outline : {kAttic, kStair})
        rc::prop("free means inside", [&outline] {
            const auto number = [](int low, int high) {
                return static_cast<double>(*rc::gen::inRange(low, high));
            };
            const auto place = Rect<Wall>::at({number(-300, 4200), number(-300, 3200)},
                                              {number(50, 900), number(50, 900)});
            RC_PRE(!is_kept_out(room_with(outline), place));
            RC_ASSERT(geometry::contains(outline, place));
        });
}

TEST_CASE("A frame well inside the wall is not kept out") {
    CHECK_FALSE(is_kept_out(room_with(kAttic), Rect<Wall>::at({0, 0}, {2500, 2400})));
    CHECK_FALSE(is_kept_out(room_with(kAttic), Rect<Wall>::at({3000, 1400}, {400, 200})));
    CHECK_FALSE(is_kept_out(room_with(kStair), Rect<Wall>::at({1000, 500}, {1000, 2500})));
    CHECK(is_kept_out(room_with(kStair), Rect<Wall>::at({990, 490}, {100, 100})));
}

TEST_CASE("Steps give away no more of a slope than one step of it") {
    const double slope = 1200.0 / 1500;
    for (double x = 2600; x < 3500; x += 37) {
        const double ceiling = 2400 - (x + 200 - 2500) * slope;
        const auto just_under = Rect<Wall>::at({x, ceiling - 100 - 20 * slope - 0.1}, {200, 100});
        CHECK_FALSE(is_kept_out(room_with(kAttic), just_under));
    }
}

TEST_CASE("A sofa, a door and a switch keep pieces out; a lamp and a plant do not") {
    Room room = room_with({{{0, 0}, {3600, 0}, {3600, 2400}, {0, 2400}}});
    const auto place = Rect<Wall>::at({1000, 500}, {300, 300});
    for (const FurnitureType type :
         {FurnitureType::sofa, FurnitureType::bookcase, FurnitureType::cot}) {
        room.furniture = {{{"it"}, type, "", place, {}, {}}};
        CHECK(is_kept_out(room, place));
        CHECK_FALSE(is_kept_out(room, place.moved({300, 0})));
    }
    for (const FurnitureType type : {FurnitureType::lamp, FurnitureType::plant}) {
        room.furniture = {{{"it"}, type, "", place, {}, {}}};
        CHECK_FALSE(is_kept_out(room, place));
    }
    room.furniture.clear();
    room.fixtures = {{{"it"}, FixtureType::light_switch, "", place, {}}};
    CHECK(is_kept_out(room, place));
}

TEST_CASE("A socket in the room behind keeps no piece out") {
    Room room = room_with(kAttic);
    Fixture socket;
    socket.id = {"socket"};
    socket.type = FixtureType::socket;
    socket.place = {{1000, 1300}, {1086, 1386}};
    room.fixtures.push_back(socket);
    const Rect<Wall> over_it{{900, 1200}, {1200, 1600}};
    CHECK(is_kept_out(room, over_it));
    room.fixtures[0].other_side = true;
    CHECK_FALSE(is_kept_out(room, over_it));
}
