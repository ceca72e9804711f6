#include "draw/paths.h"

#include "draw/looking.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Rect;
using geometry::Wall;

namespace {

const Look kLook{Paint{Ink::floor}, std::nullopt};

/// The point of a cubic curve at its middle.
Point<Wall> middle_of(Point<Wall> from, const Step<Wall>& step) {
    const auto [a, b] = *step.controls;
    return {(from.x + 3 * a.x + 3 * b.x + step.to.x) / 8,
            (from.y + 3 * a.y + 3 * b.y + step.to.y) / 8};
}

}  // namespace

TEST_CASE("A circle's curves stay within a four-thousandth of its radius") {
    const Path<Wall> path = circle<Wall>({100, 50}, 40, kLook);
    Point<Wall> from = path.start;
    for (const Step<Wall>& step : path.steps) {
        CHECK(distance(step.to, Point<Wall>{100, 50}) == Approx(40));
        CHECK(distance(middle_of(from, step), Point<Wall>{100, 50}) == Approx(40).margin(0.01));
        from = step.to;
    }
    CHECK(path.closed);
}

TEST_CASE("A rounded box fills its rectangle and no more") {
    rc::prop("whatever the radius", []() {
        const double width = *rc::gen::inRange(1, 500);
        const double height = *rc::gen::inRange(1, 500);
        const double radius = *rc::gen::inRange(0, 400);
        const Rect<Wall> rect = Rect<Wall>::at({-20, 30}, {width, height});
        const Rect<Wall> bounds = test::bounds_of(rounded_box(rect, radius, kLook));
        RC_ASSERT(std::abs(bounds.min.x - rect.min.x) < 1e-9);
        RC_ASSERT(std::abs(bounds.min.y - rect.min.y) < 1e-9);
        RC_ASSERT(std::abs(bounds.max.x - rect.max.x) < 1e-9);
        RC_ASSERT(std::abs(bounds.max.y - rect.max.y) < 1e-9);
    });
}

TEST_CASE("A line through points is open and goes through each") {
    const Path<Wall> path = lines<Wall>({{0, 0}, {5, 5}, {9, 0}}, Stroke{});
    CHECK_FALSE(path.closed);
    CHECK_FALSE(path.fill);
    REQUIRE(path.steps.size() == 2);
    CHECK(path.steps[0].to == Point<Wall>{5, 5});
    CHECK(path.steps[1].to == Point<Wall>{9, 0});
}
