#include "geometry/rect.h"

#include "geometry/transform.h"

#include <catch2/catch.hpp>

using namespace wallwright::geometry;
using WallRect = Rect<Wall>;

TEST_CASE("On the wall the top of a rectangle is its greater y, on a page its lesser") {
    const auto on_wall = WallRect::at({10, 20}, {300, 400});
    CHECK(on_wall.bottom() == 20);
    CHECK(on_wall.top() == 420);
    const auto on_page = Rect<Page>::at({10, 20}, {300, 400});
    CHECK(on_page.top() == 20);
    CHECK(on_page.bottom() == 420);
}

TEST_CASE("Rectangles that only touch do not overlap") {
    const auto left = WallRect::at({0, 0}, {100, 100});
    CHECK_FALSE(overlaps(left, WallRect::at({100, 0}, {50, 50})));
    CHECK(overlaps(left, WallRect::at({99, 0}, {50, 50})));
    CHECK(overlap_x(left, WallRect::at({160, 0}, {50, 50})) == -60);
}

TEST_CASE("The distance between rectangles is that of their nearest points") {
    const auto one = WallRect::at({0, 0}, {100, 100});
    CHECK(distance_between(one, WallRect::at({140, 20}, {50, 50})) == Approx(40));
    CHECK(distance_between(WallRect::at({20, -90}, {50, 50}), one) == Approx(40));
    CHECK(distance_between(one, WallRect::at({130, 140}, {50, 50})) == Approx(50));
    CHECK(distance_between(one, WallRect::at({50, 50}, {100, 100})) == 0);
    CHECK(distance_between(one, WallRect::at({100, 100}, {10, 10})) == 0);
}

TEST_CASE("What shares but an edge, a corner or a line touches") {
    const auto one = WallRect::at({0, 0}, {100, 100});
    CHECK(touch(one, WallRect::at({100, 100}, {10, 10})));
    CHECK(touch(one, WallRect::at({50, 20}, {0, 30})));
    CHECK_FALSE(touch(one, WallRect::at({100.01, 0}, {10, 10})));
}

TEST_CASE("Sizes are the same when both sides differ by rounding alone") {
    CHECK(is_same_size({0.1 + 0.2, 400}, {0.3, 400}));
    CHECK_FALSE(is_same_size({300, 400}, {400, 300}));
    CHECK_FALSE(is_same_size({300, 400}, {300, 400.01}));
}

TEST_CASE("The hull is the least rectangle that holds both") {
    CHECK(hull(WallRect::at({0, 0}, {10, 10}), WallRect::at({50, -5}, {10, 10})) ==
          WallRect{{0, -5}, {60, 10}});
}

TEST_CASE("A transform to the page scales and turns y round, and its inverse undoes it") {
    const Transform<Wall, Page> to_page{{20, 200}, 0.1};
    CHECK(to_page(Point<Wall>{1000, 1500}) == Point<Page>{120, 50});
    const auto back = to_page.inverse()(to_page(Point<Wall>{123, 456}));
    CHECK(back.x == Approx(123));
    CHECK(back.y == Approx(456));
    const auto frame = to_page(WallRect::at({1000, 1500}, {300, 400}));
    CHECK(frame.top() == Approx(10));
    CHECK(frame.bottom() == Approx(50));
    CHECK(frame.width() == Approx(30));
}
