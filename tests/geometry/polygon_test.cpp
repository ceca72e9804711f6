#include "geometry/polygon.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>

using namespace wallwright::geometry;

namespace {

const Polygon kFlat{{{0, 0}, {3600, 0}, {3600, 2400}, {0, 2400}}};
const Polygon kAttic{{{0, 0}, {4000, 0}, {4000, 1200}, {2500, 2400}, {0, 2400}}};
const Polygon kStair{{{0, 0}, {1000, 0}, {1000, 500}, {2000, 500}, {2000, 3000}, {0, 3000}}};

Rect<Wall> at(double x, double y, double width, double height) {
    return Rect<Wall>::at({x, y}, {width, height});
}

}  // namespace

TEST_CASE("The area of an outline does not depend on which way round it is given") {
    CHECK(area(kFlat) == Approx(3600.0 * 2400));
    Polygon other_way = kAttic;
    std::reverse(other_way.corners.begin(), other_way.corners.end());
    CHECK(area(other_way) == Approx(area(kAttic)));
    CHECK(area(kAttic) == Approx(4000.0 * 2400 - 1500.0 * 1200 / 2));
}

TEST_CASE("A flat wall is a rectangle; one with a slope, a step or a corner more is not") {
    CHECK(is_rectangle(kFlat));
    CHECK_FALSE(is_rectangle(kAttic));
    CHECK_FALSE(is_rectangle(kStair));
    CHECK_FALSE(is_rectangle({{{0, 0}, {3600, 0}, {3600, 1800}, {0, 2400}}}));
    CHECK_FALSE(is_rectangle({{{0, 0}, {1800, 0}, {3600, 0}, {3600, 2400}, {0, 2400}}}));
}

TEST_CASE("A frame under a sloping ceiling is inside only when its corner clears the slope") {
    CHECK(contains(kAttic, at(2500, 1000, 300, 400)));
    CHECK_FALSE(contains(kAttic, at(3500, 1000, 300, 900)));
    CHECK(protrusion(kAttic, at(2500, 1000, 300, 400)) == 0);
}

TEST_CASE("A frame that touches the outline is inside") {
    CHECK(contains(kFlat, at(0, 0, 3600, 2400)));
    CHECK(contains(kFlat, at(3300, 2000, 300, 400)));
    CHECK_FALSE(contains(kFlat, at(3301, 2000, 300, 400)));
    CHECK(protrusion(kFlat, at(3301, 2000, 300, 400)) == Approx(1));
}

TEST_CASE("A frame whose corners are all inside may still be cut by a step of the outline") {
    const Polygon notch{{{0, 0},
                         {1000, 0},
                         {1000, 500},
                         {1100, 500},
                         {1100, 0},
                         {2000, 0},
                         {2000, 2000},
                         {0, 2000}}};
    CHECK_FALSE(contains(notch, at(800, 300, 500, 500)));
    CHECK(protrusion(notch, at(800, 300, 500, 500)) == Approx(200));
    CHECK(contains(notch, at(800, 500, 500, 500)));
}

TEST_CASE("A stair's step is part of the outline") {
    CHECK(contains(kStair, at(1200, 600, 400, 400)));
    CHECK_FALSE(contains(kStair, at(900, 400, 400, 400)));
}

TEST_CASE("The floor and the ceiling are found above any x") {
    const auto under_slope = vertical_span(kAttic, 3250);
    REQUIRE(under_slope.has_value());
    CHECK(under_slope->low == 0);
    CHECK(under_slope->high == Approx(1800));
    CHECK(vertical_span(kStair, 1500)->low == 500);
    CHECK_FALSE(vertical_span(kFlat, -1).has_value());
}

TEST_CASE("An outline that crosses or folds onto itself is told by its sides") {
    const Polygon bow_tie{{{0, 0}, {100, 100}, {100, 0}, {0, 100}}};
    REQUIRE(crossing_sides(bow_tie).has_value());
    CHECK(crossing_sides(bow_tie)->first == 0);
    CHECK(crossing_sides(bow_tie)->second == 2);
    const Polygon spike{{{0, 0}, {100, 0}, {50, 0}, {50, 100}}};
    CHECK(crossing_sides(spike).has_value());
    CHECK_FALSE(crossing_sides(kFlat).has_value());
    CHECK_FALSE(crossing_sides(kAttic).has_value());
    CHECK_FALSE(crossing_sides(kStair).has_value());
}

TEST_CASE("A rectangle lies in a convex outline exactly when its four corners do") {
    rc::prop("contains agrees with the corners", [] {
        const auto number = [](int low, int high) {
            return static_cast<double>(*rc::gen::inRange(low, high));
        };
        const auto rect =
            at(number(-500, 4200), number(-500, 2600), number(1, 1500), number(1, 1500));
        const bool corners = contains(kAttic, rect.min) && contains(kAttic, rect.max) &&
                             contains(kAttic, Point<Wall>{rect.left(), rect.top()}) &&
                             contains(kAttic, Point<Wall>{rect.right(), rect.bottom()});
        RC_ASSERT(contains(kAttic, rect) == corners);
        RC_ASSERT((protrusion(kAttic, rect) > 0) == !corners);
    });
}

TEST_CASE("The distance to a segment is to its nearest point") {
    const Segment<Wall> floor{{0, 0}, {100, 0}};
    CHECK(distance(Point<Wall>{50, 30}, floor) == 30);
    CHECK(distance(Point<Wall>{103, 4}, floor) == 5);
}
