#include "arrange/in_the_way.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::arrange;
using spacing::Obstacle;

namespace {

/// One piece at the left, 300 x 400 mm; the target as high on the wall, 2 m to the right of it.
Way to_the_right() {
    return {WallRect::at({500, 1300}, {300, 400}),
            WallRect::at({2800, 1300}, {400, 400}),
            {300, 300},
            60};
}

std::string named(const Way& way, const std::vector<Obstacle>& things) {
    const auto found = in_the_way(way, things);
    return found ? found->title : "";
}

}  // namespace

TEST_CASE("The way leads between the nearest points, and the next piece is on it at the gap") {
    const Way way = to_the_right();
    CHECK(way.start() == WallPoint{800, 1500});
    CHECK(way.end() == WallPoint{2800, 1500});
    CHECK(way.next().left() == Approx(860));
    CHECK(way.next().bottom() == Approx(1350));
}

TEST_CASE("Of two things on the line the one nearer to the group is in the way") {
    const Obstacle window{"Window", WallRect::at({1000, 1000}, {300, 1000})};
    const Obstacle door{"Door", WallRect::at({1600, 0}, {900, 2000})};
    CHECK(named(to_the_right(), {door, window}) == "Window");
    CHECK(named(to_the_right(), {door}) == "Door");
}

TEST_CASE("What is behind, above or below the line is not in the way, nor what it leads along") {
    CHECK(named(to_the_right(), {{"Behind", WallRect::at({0, 1300}, {300, 400})},
                                 {"Shelf", WallRect::at({0, 2200}, {5000, 100})},
                                 {"Sofa", WallRect::at({0, 0}, {5000, 900})}})
              .empty());
    CHECK(named(to_the_right(), {{"Rail", WallRect::at({0, 1400 - 60}, {5000, 10})}}).empty());
}

TEST_CASE("A thing that the line passes but a piece on it does not is in the way") {
    const Obstacle low{"Sideboard", WallRect::at({900, 0}, {900, 1400})};
    CHECK(named(to_the_right(), {low}) == "Sideboard");
    const Obstacle farther{"Sideboard", WallRect::at({1900, 0}, {900, 1400})};
    CHECK(named(to_the_right(), {farther}).empty());
}

TEST_CASE("Whether the next piece fits before the thing decides by two gaps and its width") {
    const auto fits_at = [](double left) {
        const auto found =
            in_the_way(to_the_right(),
                       std::vector<Obstacle>{{"Window", WallRect::at({left, 1000}, {300, 1000})}});
        REQUIRE(found);
        return found->fits_before;
    };
    CHECK_FALSE(fits_at(800 + 60 + 300 + 59));
    CHECK(fits_at(800 + 60 + 300 + 61));
}

TEST_CASE("What stands beside the target is not in the way while there is room before it") {
    const Obstacle beside{"the wall's right end", WallRect::at({2790, 0}, {10000, 2400})};
    CHECK(named(to_the_right(), {beside}).empty());
    Way near = to_the_right();
    near.from = near.from.moved({1800, 0});
    CHECK(named(near, {beside}) == "the wall's right end");
}

TEST_CASE("A thing on a slanted way is found where the line comes to it") {
    Way way = to_the_right();
    way.target = WallRect::at({2800, 0}, {400, 400});
    CHECK(named(way, {{"Window", WallRect::at({1500, 700}, {300, 200})}}) == "Window");
    CHECK(named(way, {{"High", WallRect::at({1500, 1700}, {300, 200})}}).empty());
}
