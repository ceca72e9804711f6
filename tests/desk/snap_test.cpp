#include "desk/snap.h"

#include "desk/room_snap.h"
#include "support/gallery.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::desk;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;

namespace {

constexpr double kReach = 30;

/// One piece at 1000 to 1400 by 1300 to 1600; the gap is 60.
wall::Project wall_with_one() {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "one", {1000, 1300}, {400, 300});
    return project;
}

Rect<Wall> rested(const wall::Project& project, const Rect<Wall>& place) {
    return place.moved(snap(project, {place, {}, kReach}).by);
}

std::vector<std::string> words_of(const Snapped& snapped) {
    std::vector<std::string> words;
    for (const Guide& guide : snapped.guides)
        words.push_back(guide.words);
    return words;
}

using Words = std::vector<std::string>;

}  // namespace

TEST_CASE("A piece rests at the gap on each of the four sides of a neighbour it faces") {
    const wall::Project project = wall_with_one();
    CHECK(rested(project, Rect<Wall>::at({1475, 1290}, {300, 380})).left() == 1460);
    CHECK(rested(project, Rect<Wall>::at({650, 1290}, {300, 380})).right() == 940);
    CHECK(rested(project, Rect<Wall>::at({1050, 1650}, {200, 280})).bottom() == 1660);
    CHECK(rested(project, Rect<Wall>::at({1050, 1000}, {200, 230})).top() == 1240);
}

TEST_CASE("The gap beside a neighbour and the line of its top edge hold together") {
    const Rect<Wall> place = Rect<Wall>::at({1475, 1190}, {300, 400});
    const Snapped snapped = snap(wall_with_one(), {place, {}, kReach});
    CHECK(place.moved(snapped.by) == Rect<Wall>::at({1460, 1200}, {300, 400}));
    CHECK(words_of(snapped) == Words{"gap 60", "top edges"});
    CHECK(snapped.guides[0].kind == SnapKind::gap);
    CHECK(snapped.guides[0].line.from == Point<Wall>{1400, 1450});
    CHECK(snapped.guides[0].line.to == Point<Wall>{1460, 1450});
    CHECK(snapped.guides[1].line.from == Point<Wall>{1000, 1600});
    CHECK(snapped.guides[1].line.to == Point<Wall>{1760, 1600});
}

TEST_CASE("A neighbour that only its corner looks at gives no gap") {
    const Snapped snapped =
        snap(wall_with_one(), {Rect<Wall>::at({1475, 1640}, {300, 333}), {}, kReach});
    CHECK_FALSE(snapped.holds_x);
    CHECK_FALSE(snapped.holds_y);
    CHECK(snapped.guides.empty());
}

TEST_CASE("Of two snaps equally near the gap wins, then edges, then centres") {
    wall::Project project = wall_with_one();
    // Its left edge is where the gap ends.
    scenes::add_piece(project, "two", {1460, 400}, {333, 300});
    CHECK(words_of(snap(project, {Rect<Wall>::at({1465, 1420}, {200, 150}), {}, 10})).front() ==
          "gap 60");
    // As wide as its neighbour, so that edges and centres line up at once.
    CHECK(words_of(snap(project, {Rect<Wall>::at({1005, 900}, {400, 222}), {}, 10})) ==
          Words{"left edges"});
}

TEST_CASE("Of two snaps the nearer wins whatever its kind") {
    wall::Project project = wall_with_one();
    scenes::add_piece(project, "two", {1470, 400}, {333, 300});
    CHECK(rested(project, Rect<Wall>::at({1468, 1420}, {200, 150})).left() == 1470);
    CHECK(rested(project, Rect<Wall>::at({1463, 1420}, {200, 150})).left() == 1460);
}

TEST_CASE("What moves is not its own neighbour") {
    const Snapped snapped =
        snap(wall_with_one(), {Rect<Wall>::at({1003, 1303}, {400, 300}), {{"one"}}, kReach});
    CHECK(words_of(snapped).empty());
}

TEST_CASE("A centre rests on the centre line, and over the middle of the furniture below") {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_furniture(project, wall::FurnitureType::sofa,
                          Rect<Wall>::at({1000, 0}, {1900, 800}));
    const Rect<Wall> place = Rect<Wall>::at({1740, 1310}, {400, 400});
    const Snapped snapped = snap(project, {place, {}, kReach});
    CHECK(place.moved(snapped.by).centre() == Point<Wall>{1950, 1500});
    CHECK(words_of(snapped) == Words{"middle of the sofa", "centre line"});
    // Behind the sofa it is not above it.
    CHECK_FALSE(snap(project, {Rect<Wall>::at({1740, 700}, {400, 400}), {}, kReach}).holds_x);
}

TEST_CASE("On a stair a centre rests on the line that climbs, where its gap has put it") {
    wall::Project project = scenes::stair_gallery();
    project.style.centre_height = 1400;
    const double pitch = 180.0 / 280;
    // The first piece ends at 900, so that the middle comes to 1160, over the third nosing by 200.
    const double height = 1400 + 540 + 200 * pitch;
    const Rect<Wall> place = Rect<Wall>::at({965, height - 200 + 9}, {400, 400});
    const Snapped snapped = snap(project, {place, {{"s2"}, {"s3"}}, 12});
    CHECK(place.moved(snapped.by).left() == 960);
    CHECK(place.moved(snapped.by).centre().y == Approx(height));
    CHECK(words_of(snapped) == Words{"gap 60", "centre line"});
    CHECK(snapped.guides[1].line.to.x - snapped.guides[1].line.from.x < 500);
}

TEST_CASE("On a stair the centre line is taken where the left edge rests without a snap") {
    wall::Project project = scenes::stair_gallery();
    project.style.centre_height = 1000;
    const double pitch = 180.0 / 280;
    const Rect<Wall> place = Rect<Wall>::at({1200.4, 1615}, {400, 400});
    SnapWish wish{place, {}, 30};
    wish.step = 1;
    const Snapped snapped = snap(project, wish);
    REQUIRE_FALSE(snapped.holds_x);
    CHECK(place.moved(snapped.by).centre().y == Approx(1000 + 180 + (1400 - 400) * pitch));
}

TEST_CASE("On a stair a piece rests as high over it as its neighbour") {
    wall::Project project = scenes::stair_gallery();
    const double pitch = 180.0 / 280;
    const double height = 1750 + 460 * pitch;
    const Rect<Wall> place = Rect<Wall>::at({960, height - 150 - 7}, {400, 300});
    const Snapped snapped = snap(project, {place, {{"s2"}, {"s3"}}, 12});
    CHECK(place.moved(snapped.by).centre().y == Approx(height));
    CHECK(words_of(snapped).back() == "climbs with the stair");
}

TEST_CASE("The words of a gap are in the project's unit") {
    wall::Project project = wall_with_one();
    project.unit = units::LengthUnit::cm;
    CHECK(words_of(snap(project, {Rect<Wall>::at({1475, 1390}, {300, 333}), {}, 20})).front() ==
          "gap 6");
}

TEST_CASE("Nothing snaps beyond the reach, along a locked axis, or to what is far away") {
    const wall::Project project = wall_with_one();
    const Rect<Wall> place = Rect<Wall>::at({1475, 1190}, {300, 400});
    CHECK_FALSE(snap(project, {place, {}, 9}).holds_x);
    CHECK(snap(project, {place, {}, 15}).holds_x);
    const Snapped level = snap(project, {place, {}, kReach, true, false});
    CHECK(level.holds_x);
    CHECK_FALSE(level.holds_y);
    CHECK(level.by.y == 0);
    CHECK_FALSE(snap(project, {Rect<Wall>::at({2300, 1190}, {300, 400}), {}, 12}).holds_y);
}

TEST_CASE("A snap moves by no more than the reach, and what rests stays at rest") {
    rc::prop("snapping twice is snapping once, for a gap and edges that do not compete", [] {
        wall::Project project = scenes::wall_of(3600, 2400);
        const int count = *rc::gen::inRange(0, 6);
        for (int i = 0; i < count; ++i)
            scenes::add_piece(
                project, "p" + std::to_string(i),
                {double(*rc::gen::inRange(0, 3200)), double(*rc::gen::inRange(0, 2000))},
                {double(*rc::gen::inRange(100, 500)), double(*rc::gen::inRange(100, 500))});
        const Rect<Wall> place = Rect<Wall>::at(
            {double(*rc::gen::inRange(0, 3200)), double(*rc::gen::inRange(0, 2000))}, {251, 333});
        const Snapped once = snap(project, {place, {}, kReach});
        RC_ASSERT(std::abs(once.by.x) <= kReach && std::abs(once.by.y) <= kReach);
        RC_ASSERT(once.guides.size() == std::size_t(once.holds_x) + std::size_t(once.holds_y));
        // Along x the other axis may have brought new neighbours into sight, so one axis alone.
        const Snapped level = snap(project, {place, {}, kReach, true, false});
        if (level.holds_x)
            RC_ASSERT(
                std::abs(snap(project, {place.moved(level.by), {}, kReach, true, false}).by.x) <
                1e-9);
    });
}

TEST_CASE("Furniture rests on the floor, at the wall's ends, beside and in line with the rest") {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_furniture(project, wall::FurnitureType::sofa,
                          Rect<Wall>::at({1000, 0}, {1900, 800}));
    const auto rest = [&project](Rect<Wall> place) {
        const Snapped snapped = snap_in_room(project, {place, wall::FurnitureId{"lamp"}, kReach});
        return std::pair{place.moved(snapped.by).min, words_of(snapped)};
    };
    CHECK(rest(Rect<Wall>::at({12, 8}, {300, 1500})) ==
          std::pair{Point<Wall>{0, 0}, Words{"end of the wall", "floor"}});
    CHECK(rest(Rect<Wall>::at({2910, 8}, {300, 1500})) ==
          std::pair{Point<Wall>{2900, 0}, Words{"beside the sofa", "floor"}});
    CHECK(rest(Rect<Wall>::at({1010, 815}, {333, 200})) ==
          std::pair{Point<Wall>{1000, 800}, Words{"left edges", "on top of the sofa"}});
    CHECK(rest(Rect<Wall>::at({1790, 1900}, {300, 200})) ==
          std::pair{Point<Wall>{1800, 1900}, Words{"centres"}});
}

TEST_CASE("Only the side that is dragged snaps") {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_furniture(project, wall::FurnitureType::sofa,
                          Rect<Wall>::at({1000, 0}, {1900, 800}));
    RoomWish wish{Rect<Wall>::at({10, 300}, {980, 300}), wall::FurnitureId{"table"}, kReach};
    wish.free_y = false;
    wish.side_x = 1;
    const Snapped snapped = snap_in_room(project, wish);
    CHECK(snapped.by.x == 10);
    CHECK(words_of(snapped) == Words{"beside the sofa"});
}

TEST_CASE("On a stair furniture rests on the floor that is under it") {
    wall::Project project = scenes::wall_of(3600, 2400);
    project.room.outline.corners = {{0, 0},      {2000, 0},    {2000, 500},
                                    {3600, 500}, {3600, 2400}, {0, 2400}};
    const RoomWish wish{Rect<Wall>::at({2500, 510}, {300, 1200}), wall::FurnitureId{"lamp"},
                        kReach};
    CHECK(snap_in_room(project, wish).by.y == -10);
}

TEST_CASE("A corner rests plumb and level with its neighbours, but never on one of them") {
    const wall::Project project = scenes::wall_of(3600, 2400);
    const auto rest = [&project](Point<Wall> at) {
        return at + snap_corner(project, 2, {{at, at}, {}, kReach}).by;
    };
    CHECK(rest({3590, 2410}) == Point<Wall>{3600, 2400});
    CHECK(rest({3590, 1900}) == Point<Wall>{3600, 1900});
    CHECK(rest({3000, 2390}) == Point<Wall>{3000, 2400});
    CHECK(rest({3590, 5}) == Point<Wall>{3590, 0});
}
