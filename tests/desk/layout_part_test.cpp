#include "desk/layout_part.h"

#include "searching.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace wallwright;
using namespace wallwright::desk;
using geometry::Rect;
using geometry::Screen;
using geometry::Wall;

TEST_CASE("A small picture shows every piece of every layout and the top of the sofa") {
    Session session(some_pieces());
    LayoutChoice choice;
    choice.options = few_rounds();
    choice.search(session);
    wait_for(choice, session);
    const Rect<Wall> part = shown_part(choice.task(), choice.layouts());
    for (const RankedLayout& layout : choice.layouts())
        for (const arrange::Spot& spot : layout.candidate.layout)
            CHECK(hull(part, spot.place) == part);
    CHECK(part.min.y < 800);
    CHECK(hull(part, choice.task().wall) == choice.task().wall);
}

TEST_CASE("In a small picture the gap is a whole number of pixels, and all of it is in sight") {
    const Rect<Wall> part = Rect<Wall>::at({700, 500}, {2000, 1300});
    const Rect<Wall> wall = Rect<Wall>::at({0, 0}, {3600, 2400});
    const Rect<Screen> area = Rect<Screen>::at({10, 20}, geometry::Size{150, 96});
    const auto view = small_view(part, wall, area, 60);
    const double pixels = 60 * view.scale;
    CHECK(pixels == Approx(std::round(pixels)));
    CHECK(pixels >= 1);
    CHECK(hull(area, view(part)) == area);
}

TEST_CASE("A wall so large that a gap is no pixel wide still fits") {
    const Rect<Wall> part = Rect<Wall>::at({0, 0}, {90'000, 9000});
    const Rect<Screen> area = Rect<Screen>::at({0, 0}, geometry::Size{150, 96});
    CHECK(small_view(part, part, area, 60)(part).width() == Approx(150));
}

TEST_CASE("A small picture has the wall in its middle where all of it has room") {
    const Rect<Wall> wall = Rect<Wall>::at({0, 0}, {2000, 2400});
    const Rect<Wall> part = Rect<Wall>::at({100, 200}, {1500, 2000});
    const Rect<Screen> area = Rect<Screen>::at({10, 20}, geometry::Size{200, 100});
    const Rect<Screen> seen = small_view(part, wall, area, 60)(wall);
    CHECK(seen.centre().x == Approx(area.centre().x));
    CHECK(seen.width() < area.width());
}

TEST_CASE("Where a wall has no room in its small picture nothing beyond it is seen") {
    const Rect<Wall> wall = Rect<Wall>::at({0, 0}, {4000, 2400});
    const Rect<Screen> area = Rect<Screen>::at({10, 20}, geometry::Size{150, 96});
    const double left = GENERATE(0.0, 60.0, 900.0, 2200.0);
    const double bottom = GENERATE(0.0, 700.0, 1200.0);
    const Rect<Wall> part = Rect<Wall>::at({left, bottom}, {1800, 1200});
    const auto view = small_view(part, wall, area, 60);
    CHECK(hull(area, view(part)).width() == Approx(area.width()));
    CHECK(hull(area, view(part)).height() == Approx(area.height()));
    CHECK(hull(view(wall), area).width() == Approx(view(wall).width()));
    CHECK(hull(view(wall), area).height() == Approx(view(wall).height()));
}
