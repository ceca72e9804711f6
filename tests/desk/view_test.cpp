#include "desk/view.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright::desk;

namespace {

const Rect<Screen> kArea{{20, 50}, {920, 650}};

void check_near(Point<Screen> a, Point<Screen> b) {
    CHECK(a.x == Approx(b.x).margin(1e-6));
    CHECK(a.y == Approx(b.y).margin(1e-6));
}

}  // namespace

TEST_CASE("A fitted wall lies in the middle of its area and inside it") {
    View view;
    view.fit({{-100, -300}, {3700, 2500}}, kArea);
    check_near(view.to_screen()(Point<Wall>{1800, 1100}), kArea.centre());
    const Rect<Screen> whole = view.to_screen()(Rect<Wall>{{-100, -300}, {3700, 2500}});
    CHECK(whole.width() <= kArea.width() + 1e-9);
    CHECK(whole.height() <= kArea.height() + 1e-9);
    CHECK((whole.width() == Approx(kArea.width()) || whole.height() == Approx(kArea.height())));
}

TEST_CASE("What is under the pointer stays there while the wall is zoomed") {
    rc::prop("for any place and factor", [] {
        View view;
        view.fit({{0, 0}, {3600, 2400}}, kArea);
        const Point<Screen> at{double(*rc::gen::inRange(0, 1000)),
                               double(*rc::gen::inRange(0, 700))};
        const Point<Wall> before = view.to_wall(at);
        view.zoom(at, *rc::gen::inRange(1, 400) / 100.0);
        RC_ASSERT(wallwright::geometry::distance(before, view.to_wall(at)) < 1e-6);
        RC_ASSERT(view.scale() >= View::kLeast);
        RC_ASSERT(view.scale() <= View::kMost);
    });
}

TEST_CASE("Dragging the wall moves it as far as the hand") {
    View view;
    view.fit({{0, 0}, {3600, 2400}}, kArea);
    const Point<Screen> before = view.to_screen()(Point<Wall>{1000, 1000});
    view.pan({30, -12});
    check_near(view.to_screen()(Point<Wall>{1000, 1000}), {before.x + 30, before.y - 12});
    CHECK(view.mm(view.scale()) == Approx(1));
}
