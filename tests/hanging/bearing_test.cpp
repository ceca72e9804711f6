#include "hanging/bearing.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>

namespace wallwright::hanging {

namespace {

using geometry::Size;
using wall::Hanger;
using wall::HangerType;

constexpr Size kOutside{500, 400};
constexpr Newtons kWeight{20};

Hanger hanger_of(HangerType type) {
    Hanger hanger;
    hanger.type = type;
    return hanger;
}

Bearing bearing(const Hanger& hanger, Size outside = kOutside) {
    const auto found = bearing_of(complete(hanger, outside), outside, kWeight);
    REQUIRE(found);
    return *found;
}

}  // namespace

// Apartment Therapy, "How to hang your artwork properly": centre at 57 in, picture 20 in high, taut
// wire 2 in below its top: the hook goes at 65 in.
TEST_CASE("The article's hook goes 8 in above the centre line") {
    const double inch = units::kMmPerInch;
    Hanger hanger = hanger_of(HangerType::cord_one_hook);
    const Size outside{16 * inch, 20 * inch};
    // Rings 5 in down and 12 in apart; the cord that rises 3 in of them has legs of 3, 6 and the
    // square root of 45 in.
    hanger.drop = 5 * inch;
    hanger.ring_spacing = 12 * inch;
    hanger.cord_length = 2 * std::sqrt(45) * inch;
    const Bearing found = bearing(hanger, outside);
    REQUIRE(found.points.size() == 1);
    CHECK(found.points[0].down == Approx(2 * inch));
    CHECK(found.points[0].across == Approx(8 * inch));
    const double top = 57 * inch + outside.height / 2;
    CHECK((top - found.points[0].down) / inch == Approx(65));
}

// Hopkinton Center for the Arts, framing guidelines: rings between 1/3 and 1/4 down.
TEST_CASE(
    "Rings that were not measured are taken a quarter down and eight tenths of the width apart") {
    const Hanger whole = complete(hanger_of(HangerType::two_rings), kOutside);
    CHECK(*whole.drop == 100);
    CHECK(*whole.ring_spacing == Approx(400));
    CHECK_FALSE(whole.cord_length);
    CHECK_FALSE(whole.hook_spacing);
}

// Off Track Gallery, picture-hanging guidelines: at least 2 in from the top to the taut wire.
TEST_CASE("A cord that was not measured comes to rest 50 mm under the top") {
    const HangerType type = GENERATE(HangerType::cord_one_hook, HangerType::cord_two_hooks);
    for (const BackPoint& point : bearing(hanger_of(type)).points)
        CHECK(point.down == Approx(50));
}

TEST_CASE("On a low frame an unmeasured cord comes to rest half way between rings and top") {
    const Bearing found = bearing(hanger_of(HangerType::cord_one_hook), {300, 160});
    CHECK(found.points.at(0).down == Approx(20));
}

TEST_CASE("Two hooks that were not measured stand a third of the ring spacing apart") {
    const Bearing found = bearing(hanger_of(HangerType::cord_two_hooks));
    REQUIRE(found.points.size() == 2);
    CHECK(found.points[1].across - found.points[0].across == Approx(400.0 / 3));
    CHECK(found.points[0].across + found.points[1].across == Approx(500));
    REQUIRE(found.cord);
    CHECK(found.cord->hook_down.value == Approx(10));
}

TEST_CASE("A sawtooth bears in the middle, 15 mm down or a quarter down a very low frame") {
    CHECK(bearing(hanger_of(HangerType::sawtooth)).points == std::vector{BackPoint{250, 15}});
    CHECK(bearing(hanger_of(HangerType::sawtooth), {200, 40}).points ==
          std::vector{BackPoint{100, 10}});
}

TEST_CASE("Two rings bear where they are, without a cord") {
    Hanger hanger = hanger_of(HangerType::two_rings);
    hanger.drop = 90;
    hanger.ring_spacing = 420;
    const Bearing found = bearing(hanger);
    CHECK(found.points == std::vector{BackPoint{40, 90}, BackPoint{460, 90}});
    CHECK_FALSE(found.cord);
}

TEST_CASE("Measures that were taken are kept as they are") {
    Hanger hanger = hanger_of(HangerType::cord_two_hooks);
    hanger.drop = 120;
    hanger.ring_spacing = 380;
    hanger.hook_spacing = 200;
    hanger.cord_length = 420;
    CHECK(complete(hanger, kOutside) == hanger);
}

TEST_CASE("Strips have no bearing points and no measures") {
    CHECK(complete(hanger_of(HangerType::strips), kOutside) == hanger_of(HangerType::strips));
    CHECK(bearing(hanger_of(HangerType::strips)).points.empty());
}

TEST_CASE("A cord that would hold the hook above the frame is refused with its measures") {
    Hanger hanger = hanger_of(HangerType::cord_one_hook);
    hanger.drop = 80;
    hanger.ring_spacing = 300;
    hanger.cord_length = 340;  // Rises 80 mm: the 8-15-17 triangle.
    const auto found = bearing_of(complete(hanger, kOutside), kOutside, kWeight);
    REQUIRE_FALSE(found);
    CHECK(found.error().what ==
          "a cord of 340 mm reaches 80 mm above its rings, which sit 80 mm below the top, so that "
          "the hook would show above the frame");
    CHECK(found.error().remedy == "shorten the cord");
}

TEST_CASE(
    "A hanger that nobody measured always bears inside the piece, level and about its middle") {
    rc::prop("for any frame", [] {
        const auto length = [](int low, int high) {
            return *rc::gen::inRange(10 * low, 10 * high) / 10.0;
        };
        const Size outside{length(30, 3000), length(30, 3000)};
        const auto type = *rc::gen::element(HangerType::sawtooth, HangerType::two_rings,
                                            HangerType::cord_one_hook, HangerType::cord_two_hooks);
        const auto found = bearing_of(complete(hanger_of(type), outside), outside, kWeight);
        RC_ASSERT(found.has_value());
        RC_ASSERT(!found->points.empty());
        double sum = 0;
        for (const BackPoint& point : found->points) {
            RC_ASSERT(point.down > 0);
            RC_ASSERT(point.down <= outside.height / 4 + 1e-9);
            RC_ASSERT(point.across > 0);
            RC_ASSERT(point.across < outside.width);
            RC_ASSERT(point.down == found->points.front().down);
            sum += point.across - outside.width / 2;
        }
        RC_ASSERT(std::abs(sum) < 1e-9 * outside.width);
    });
}

}  // namespace wallwright::hanging
