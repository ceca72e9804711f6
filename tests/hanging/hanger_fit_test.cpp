#include "hanging/hanger_fit.h"

#include "hanging/bearing.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

namespace wallwright::hanging {

namespace {

using geometry::Size;
using units::LengthUnit;
using wall::Hanger;
using wall::HangerType;
using wall::Severity;

constexpr Size kOutside{500, 400};

/// Sound measures; each test spoils one.
Hanger sound(HangerType type) {
    Hanger hanger;
    hanger.type = type;
    hanger.drop = 100;
    if (type != HangerType::sawtooth)
        hanger.ring_spacing = 400;
    if (type == HangerType::cord_one_hook || type == HangerType::cord_two_hooks)
        hanger.cord_length = 420;
    if (type == HangerType::cord_two_hooks)
        hanger.hook_spacing = 150;
    return hanger;
}

std::vector<Misfit> wrong_with(const Hanger& hanger, LengthUnit unit = LengthUnit::mm) {
    return misfits(hanger, kOutside, unit);
}

Misfit only_misfit(const Hanger& hanger) {
    const std::vector<Misfit> wrong = wrong_with(hanger);
    REQUIRE(wrong.size() == 1);
    return wrong.front();
}

}  // namespace

TEST_CASE("A hanger with sound measures has nothing wrong") {
    const HangerType type =
        GENERATE(HangerType::strips, HangerType::sawtooth, HangerType::two_rings,
                 HangerType::cord_one_hook, HangerType::cord_two_hooks);
    CHECK(wrong_with(sound(type)).empty());
}

TEST_CASE("A hanger at or below the piece's middle would tip it over") {
    Hanger hanger = sound(HangerType::two_rings);
    hanger.drop = 200;
    const Misfit misfit = only_misfit(hanger);
    CHECK(misfit.severity == Severity::stop);
    CHECK(misfit.measured == 200);
    CHECK(misfit.wanted == 200);
    CHECK(misfit.unit == "mm");
    CHECK(to_text(misfit) ==
          "the hanger sits 200 mm below the top, and from the middle at 200 mm down the piece tips "
          "over; fix it in the upper half");
}

TEST_CASE("A hanger at the very top edge is measured wrong") {
    Hanger hanger = sound(HangerType::sawtooth);
    hanger.drop = 0;
    CHECK(only_misfit(hanger).severity == Severity::stop);
}

TEST_CASE("Rings as wide apart as the frame do not fit on it") {
    Hanger hanger = sound(HangerType::two_rings);
    hanger.ring_spacing = 500;
    CHECK(to_text(only_misfit(hanger)) ==
          "rings 500 mm apart do not fit on a frame 500 mm wide; measure between them again");
}

TEST_CASE("Keyholes are called so where they do not fit") {
    Hanger hanger = sound(HangerType::keyholes);
    CHECK(wrong_with(hanger).empty());
    hanger.ring_spacing = 500;
    CHECK(to_text(only_misfit(hanger)) ==
          "keyholes 500 mm apart do not fit on a frame 500 mm wide; measure between them again");
}

TEST_CASE("Hooks as wide apart as the rings do not go under one cord") {
    Hanger hanger = sound(HangerType::cord_two_hooks);
    hanger.hook_spacing = 400;
    CHECK(to_text(only_misfit(hanger)) ==
          "two hooks 400 mm apart do not go under a cord with its rings 400 mm apart; set the "
          "hooks closer together");
}

TEST_CASE("A cord shorter than the ring spacing does not reach") {
    Hanger hanger = sound(HangerType::cord_one_hook);
    hanger.cord_length = 390;
    const Misfit misfit = only_misfit(hanger);
    CHECK(misfit.measured == 390);
    CHECK(misfit.wanted == 400);
    CHECK(to_text(misfit) ==
          "a cord of 390 mm does not reach over a hook between rings 400 mm apart; take a longer "
          "cord");
}

TEST_CASE("A cord so long that the hook shows above the frame is stopped") {
    Hanger hanger = sound(HangerType::cord_one_hook);
    hanger.ring_spacing = 300;
    hanger.cord_length = 500;  // Rises 200 mm: the 3-4-5 triangle.
    const Misfit misfit = only_misfit(hanger);
    CHECK(misfit.severity == Severity::stop);
    CHECK(misfit.measured == Approx(200));
    CHECK(misfit.wanted == 100);
}

// A trade wall chart of wire angles, copied in a framers' forum: at 10 degrees a 10 lb frame pulls
// each ring with 29 lb.
TEST_CASE("A cord flatter than 10 degrees is to be minded, with how hard it pulls") {
    Hanger hanger = sound(HangerType::cord_one_hook);
    hanger.cord_length = 400 / 0.98769;  // cos 9 degrees
    const Misfit misfit = only_misfit(hanger);
    CHECK(misfit.severity == Severity::mind);
    CHECK(misfit.measured == Approx(9).margin(0.01));
    CHECK(misfit.wanted == 10);
    CHECK(misfit.unit == "deg");
    // 1 / (2 sin 9 degrees) = 3.196
    CHECK(misfit.what ==
          "the cord lies so flat (9.0 degrees) that it pulls each ring with 3.2 times the weight "
          "of the piece");
    hanger.cord_length = 400 / 0.98163;  // cos 11 degrees
    CHECK(wrong_with(hanger).empty());
}

TEST_CASE("Misfits speak the person's unit") {
    Hanger hanger = sound(HangerType::two_rings);
    hanger.ring_spacing = 508;
    CHECK(wrong_with(hanger, LengthUnit::inch).at(0).what ==
          "rings 20 in apart do not fit on a frame 19 11/16 in wide");
}

TEST_CASE("Whatever the measures, a hanger either has a stop or bears inside the piece") {
    rc::prop("for any hanger", [] {
        const auto length = [](int low, int high) {
            return *rc::gen::inRange(10 * low, 10 * high) / 10.0;
        };
        Hanger hanger;
        hanger.type = *rc::gen::element(HangerType::sawtooth, HangerType::two_rings,
                                        HangerType::cord_one_hook, HangerType::cord_two_hooks);
        const Size outside{length(50, 900), length(50, 900)};
        hanger.drop = length(0, 300);
        hanger.ring_spacing = length(0, 900);
        hanger.hook_spacing = length(0, 500);
        hanger.cord_length = length(0, 1500);
        const auto wrong = misfits(hanger, outside, LengthUnit::mm);
        const bool stopped = !wrong.empty() && wrong.front().severity == Severity::stop;
        const auto bearing = bearing_of(hanger, outside, {10});
        RC_ASSERT(bearing.has_value() == !stopped);
        if (!bearing)
            return;
        for (const BackPoint& point : bearing->points) {
            RC_ASSERT(point.down > 0);
            RC_ASSERT(point.down < outside.height / 2);
            RC_ASSERT(point.across > 0);
            RC_ASSERT(point.across < outside.width);
        }
    });
}

}  // namespace wallwright::hanging
