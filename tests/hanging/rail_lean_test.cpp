#include "hanging/rail_lean.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>

namespace wallwright::hanging {

namespace {

/// Moment that tips the piece outward about its lower back edge when it leans by `angle`, for a
/// weight of 1: nothing is taken for small. The edge stays on the wall, which rubs nothing, so the
/// cord carries the whole weight and pulls along its own slant.
double tipping(const SideView& side, double hook_height, double angle) {
    const double out = side.depth * std::cos(angle) + side.height / 2 * std::sin(angle);
    const double tied_out = side.tied * std::sin(angle);
    const double tied_up = side.tied * std::cos(angle);
    const double back = tied_out / (hook_height - tied_up);
    return out - tied_out - back * tied_up;
}

/// Where the piece comes to rest, by halving the angle.
double at_rest(const SideView& side) {
    const double hook_height = side.tied + side.cord;
    double low = 0;
    double high = 0.7;
    for (int i = 0; i < 100; ++i) {
        const double middle = (low + high) / 2;
        (tipping(side, hook_height, middle) > 0 ? low : high) = middle;
    }
    return side.tied * std::sin(low);
}

double number(int low, int high) {
    return *rc::gen::inRange(10 * low, 10 * high) / 10.0;
}

}  // namespace

TEST_CASE("A piece 25 mm deep on 925 mm of cord leans out until its rings are 17 mm off the wall") {
    const SideView side{12.5, 375, 925, 500};
    CHECK(lean_out(side) == Approx(16.92).margin(0.01));
    CHECK(at_rest(side) == Approx(16.92).epsilon(0.01));
}

TEST_CASE("The lean is where the moments about the lower edge balance") {
    rc::prop("for any piece that leans little", [] {
        SideView side;
        side.height = number(150, 1500);
        side.tied = side.height * number(60, 95) / 100;
        side.cord = number(100, 2500);
        side.depth = number(5, 20);
        const double out = lean_out(side);
        RC_PRE(out < 0.12 * side.tied);
        RC_ASSERT(std::abs(out - at_rest(side)) < 0.05 * out);
    });
}

}  // namespace wallwright::hanging
