#include "hanging/hanging_order.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using geometry::Rect;
using geometry::Wall;
using Order = std::vector<std::size_t>;

Upcoming at(double x, double y, double width = 300, double height = 300) {
    return {Rect<Wall>::at({x, y}, {width, height}), 0};
}

Upcoming in_stage(int stage, Upcoming piece) {
    piece.stage = stage;
    return piece;
}

double clear_between(const Upcoming& one, const Upcoming& other) {
    const Rect<Wall>& a = one.place;
    const Rect<Wall>& b = other.place;
    const double x = std::max({0.0, a.left() - b.right(), b.left() - a.right()});
    const double y = std::max({0.0, a.bottom() - b.top(), b.bottom() - a.top()});
    return std::hypot(x, y);
}

}  // namespace

TEST_CASE("A row is hung from its middle outward") {
    CHECK(hanging_order({at(0, 0), at(360, 0), at(720, 0), at(1080, 0), at(1440, 0)}) ==
          Order{2, 1, 3, 0, 4});
}

TEST_CASE("Hanging begins in the lowest row, whatever stands in the middle above it") {
    CHECK(hanging_order({at(360, 800), at(0, 10), at(360, 0), at(720, 40)}).front() == 2);
}

TEST_CASE("A piece is not hung before one that lies nearer to those on the wall") {
    // The far piece is nearer to the first than its own neighbour is to anything but it.
    CHECK(hanging_order({at(0, 0), at(5000, 0), at(360, 0), at(0, 360)}) == Order{2, 0, 3, 1});
}

TEST_CASE("What belongs to an earlier stage is hung before all of a later one") {
    CHECK(hanging_order({in_stage(2, at(720, 0)), in_stage(1, at(0, 360)), in_stage(1, at(0, 720)),
                         in_stage(2, at(360, 0))}) == Order{1, 2, 3, 0});
}

TEST_CASE("No piece and one piece are easily ordered") {
    CHECK(hanging_order({}).empty());
    CHECK(hanging_order({at(100, 100)}) == Order{0});
}

TEST_CASE("Each piece comes once, and is the nearest that was left to those before it") {
    rc::prop("for any wall", [] {
        const int count = *rc::gen::inRange(1, 25);
        std::vector<Upcoming> places;
        for (int i = 0; i < count; ++i)
            places.push_back(at(*rc::gen::inRange(0, 6000), *rc::gen::inRange(0, 2000),
                                *rc::gen::inRange(50, 900), *rc::gen::inRange(50, 900)));
        const Order order = hanging_order(places);
        Order sorted = order;
        std::sort(sorted.begin(), sorted.end());
        for (std::size_t i = 0; i < places.size(); ++i)
            RC_ASSERT(sorted.at(i) == i);
        RC_ASSERT(sorted.size() == places.size());
        const auto reach = [&](std::size_t piece, std::size_t hung) {
            double nearest = 1e9;
            for (std::size_t i = 0; i < hung; ++i)
                nearest = std::min(nearest, clear_between(places[piece], places[order[i]]));
            return nearest;
        };
        for (std::size_t i = 1; i < order.size(); ++i)
            for (std::size_t later = i + 1; later < order.size(); ++later)
                RC_ASSERT(reach(order[i], i) <= reach(order[later], i) + 1e-9);
    });
}

}  // namespace wallwright::hanging
