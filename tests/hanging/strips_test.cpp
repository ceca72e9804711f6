#include "hanging/strips.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>

namespace wallwright::hanging {

using geometry::Rect;
using geometry::Size;
using geometry::Wall;

namespace {

constexpr Size kStrip{16, 46};

/// The strip about its middle, on the frame with its upper left corner at 0, 0; `down` is taken as
/// a height below it.
Rect<Wall> strip_at(const BackPoint& middle, Size footprint) {
    return Rect<Wall>::at(
        {middle.across - footprint.width / 2, -middle.down - footprint.height / 2}, footprint);
}

}  // namespace

TEST_CASE("Pairs are as many as the weight and its margin ask for, and at least two") {
    CHECK(pairs_needed({0.1}, {0.4}, 1.5) == 2);
    CHECK(pairs_needed({0.6}, {0.4}, 1.5) == 3);
    CHECK(pairs_needed({1.2}, {0.4}, 1.5) == 5);
    CHECK(pairs_needed({2.4}, {1.8}, 1.5) == 2);
    CHECK(pairs_needed({2.401}, {1.8}, 1.5) == 3);
    CHECK(pairs_needed({0}, {1.8}, 1.5) == 2);
}

TEST_CASE("A weight that asks for exactly a whole number of pairs gets that number") {
    // 0.1 x 3 is a little more than 0.3 in binary.
    CHECK(pairs_needed({0.1 * 3}, {0.1}, 1) == 3);
}

// Worked by hand: 3.0 kg with its centre of gravity 18 mm off the wall, 300 mm below the upper
// fixing: 29.42 N x 18 / 300 = 1.77 N.
TEST_CASE("The pull at the top pair is the weight times the depth over the height") {
    CHECK(top_pull(weight_of(Kilograms{3.0}), 18, 300).value == Approx(1.77).margin(0.005));
}

TEST_CASE("A deeper frame pulls more at the top and a higher strip is pulled less") {
    const Newtons weight{20};
    CHECK(top_pull(weight, 30, 300) > top_pull(weight, 20, 300));
    CHECK(top_pull(weight, 20, 500) < top_pull(weight, 20, 300));
}

TEST_CASE("Strips go to the top corners first, then to the bottom corners, then below the top") {
    const auto middles = lay_out(6, kStrip, {{300, 400}, 40});
    REQUIRE(middles.size() == 6);
    CHECK(middles[0] == BackPoint{3 + 8, 3 + 23});
    CHECK(middles[1] == BackPoint{300 - 11, 26});
    CHECK(middles[2] == BackPoint{11, 400 - 26});
    CHECK(middles[3] == BackPoint{289, 374});
    CHECK(middles[4] == BackPoint{11, 26 + 46 + 5});
    CHECK(middles[5] == BackPoint{289, 77});
}

TEST_CASE("On a moulding hardly wider than the strip it lies in the moulding's middle") {
    CHECK(lay_out(2, kStrip, {{300, 400}, 18}).front().across == 9);
    CHECK(lay_out(2, kStrip, {{300, 400}, 16}).front().across == 8);
}

TEST_CASE("A low frame takes only the strips that fit above each other") {
    CHECK(lay_out(6, kStrip, {{300, 101}, 20}).size() == 4);
    CHECK(lay_out(6, kStrip, {{300, 100}, 20}).size() == 2);
    CHECK(lay_out(6, kStrip, {{300, 46}, 20}).size() == 2);
    CHECK(lay_out(6, kStrip, {{300, 45}, 20}).empty());
}

TEST_CASE("A very narrow frame takes one column of strips in its middle") {
    const auto middles = lay_out(6, kStrip, {{30, 400}, 14});
    REQUIRE_FALSE(middles.empty());
    for (const BackPoint& middle : middles)
        CHECK(middle.across == 15);
    CHECK(lay_out(2, kStrip, {{15, 400}, 7}).empty());
}

TEST_CASE("Strips never overlap, never leave the frame and never are more than asked for") {
    rc::prop("for any frame and strip", [] {
        const auto length = [](int low, int high) {
            return *rc::gen::inRange(10 * low, 10 * high) / 10.0;
        };
        const Size footprint{length(5, 40), length(20, 120)};
        const Size outside{length(20, 1500), length(20, 1500)};
        const FrameBack back{outside, length(1, 60)};
        const int pairs = *rc::gen::inRange(2, 20);
        const auto middles = lay_out(pairs, footprint, back);
        RC_ASSERT(static_cast<int>(middles.size()) <= pairs);
        for (std::size_t i = 0; i < middles.size(); ++i) {
            const Rect<Wall> strip = strip_at(middles[i], footprint);
            RC_ASSERT(strip.left() >= -1e-9);
            RC_ASSERT(strip.right() <= outside.width + 1e-9);
            RC_ASSERT(strip.top() <= 1e-9);
            RC_ASSERT(strip.bottom() >= -outside.height - 1e-9);
            RC_ASSERT(middles[i].down >= middles.front().down);
            for (std::size_t j = 0; j < i; ++j)
                RC_ASSERT(!overlaps(strip, strip_at(middles[j], footprint)));
        }
    });
}

TEST_CASE("A frame with room for two columns is never refused its top corners") {
    rc::prop("for any frame that is large enough", [] {
        const auto length = [](int low, int high) {
            return *rc::gen::inRange(10 * low, 10 * high) / 10.0;
        };
        const Size footprint{length(5, 40), length(20, 120)};
        const Size outside{2 * footprint.width + length(25, 500),
                           footprint.height + length(0, 500)};
        const double moulding = footprint.width + length(0, 20);
        const auto middles = lay_out(2, footprint, {outside, moulding});
        RC_ASSERT(middles.size() == 2U);
        RC_ASSERT(middles[0].down == middles[1].down);
        RC_ASSERT(std::abs(middles[0].across + middles[1].across - outside.width) < 1e-9);
        RC_ASSERT(middles[0].across + footprint.width / 2 <= moulding + 1e-9);
    });
}

}  // namespace wallwright::hanging
