#include "hanging/cord.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>
#include <numbers>

namespace wallwright::hanging {

namespace {

using units::Kilograms;
using units::Newtons;

double radians(double degrees) {
    return degrees * std::numbers::pi / 180;
}

/// A cord over one hook at the angle, in degrees above the horizontal.
Cord at_angle(double degrees, Newtons weight) {
    const double spacing = 1000;
    const auto cord = over_one_hook(spacing, spacing / std::cos(radians(degrees)), weight);
    REQUIRE(cord);
    CHECK(cord->angle_deg == Approx(degrees).epsilon(1e-9));
    return *cord;
}

struct Case {
    double spacing = 0;
    double hooks = 0;
    double length = 0;
    Newtons weight;
};

Case some_case() {
    const auto between = [](int low, int high) {
        return static_cast<double>(*rc::gen::inRange(low, high));
    };
    Case one;
    one.spacing = between(1, 20000) / 10;
    one.hooks = one.spacing * between(1, 1000) / 1000;
    one.length = one.spacing + between(1, 100000) / 100;
    one.weight = {between(1, 2000) / 10};
    return one;
}

}  // namespace

// OpenStax, College Physics, section 4.5, "What is the tension in a tightrope?": 70.0 kg at
// mid-wire, 5.0 degrees, "almost six times the weight": 3900 N, with its rounded sine of 0.0872
// 3933 N, unrounded 3935 N with its g of 9.80.
TEST_CASE("The tension under a tightrope walker is the textbook's") {
    const Cord cord = at_angle(5.0, {70.0 * 9.80});
    CHECK(cord.tension.value == Approx(3935).margin(1));
    CHECK(std::round(cord.tension.value / 100) * 100 == 3900);
}

// Young and Freedman, University Physics, chapter 5, problem 5.5: T = 0.75 W when the wires
// are 48.2 degrees from the vertical.
TEST_CASE(
    "A picture on two wires with three quarters of its weight in each hangs at 48.2 degrees") {
    const Cord cord = at_angle(90 - 48.2, {100});
    CHECK(cord.tension.value == Approx(75).margin(0.05));
}

// Trade wall chart of wire angles for a 10 lb frame, copied in a framers' forum, "Framing wire
// angles": pounds of force on each hanger, in whole pounds.
TEST_CASE("The force on each ring is that of the framers' chart of wire angles") {
    struct Row {
        double degrees;
        double pounds;
    };
    const Row row = GENERATE(Row{60, 6}, Row{45, 7}, Row{30, 10}, Row{15, 19}, Row{10, 29},
                             Row{5, 57}, Row{2, 143});
    const Newtons pound = weight_of(Kilograms{units::kKgPerPound});
    const Cord cord = at_angle(row.degrees, 10 * pound);
    CHECK(std::round(cord.tension / pound) == row.pounds);
}

// Giancoli, Physics: Principles with Applications, 7th ed., chapter 9, problem 75: 60.0 kg in the
// middle of a 36 m wire that sags 2.1 m; the solution takes sin a = 2.1/18 and gets 2520 N, 2500 N
// in two figures.
TEST_CASE("A wire sagging 2.1 m in 36 m under 60 kg is pulled as the textbook says") {
    const double half = 18000;
    const double sag = 2100;
    const auto cord =
        over_one_hook(2 * std::sqrt(half * half - sag * sag), 2 * half, {60.0 * 9.80});
    REQUIRE(cord);
    CHECK(cord->drop == Approx(sag));
    CHECK(cord->angle_deg == Approx(6.70).margin(0.005));
    CHECK(cord->tension.value == Approx(2520).margin(1));
}

// Young and Freedman, University Physics, chapter 5, problem 5.3 (book from memory): 90.0 kg
// at 10.0 degrees, 2.54 x 10^3 N; a rope that breaks at 2.50 x 10^4 N may hang as flat as 1.01
// degrees (that angle worked out by hand).
TEST_CASE("The explorer's rope is pulled as the textbook says") {
    CHECK(at_angle(10.0, {90.0 * 9.80}).tension.value == Approx(2540).margin(1));
    CHECK(at_angle(1.01, {90.0 * 9.80}).tension.value == Approx(2.50e4).epsilon(0.002));
}

// A homework problem discussed in a physics forum: two strings on a nail, each 3.5 N at 45 degrees,
// hold 4.9 N.
TEST_CASE("Two strings of 3.5 N at 45 degrees hold 4.9 N, all of it on the nail") {
    const Cord cord = at_angle(45, {4.95});
    CHECK(cord.tension.value == Approx(3.5).margin(0.01));
    CHECK(cord.hook_down.value == Approx(4.95));
    CHECK(cord.hook_sideways.value == 0);
}

// A textbook-type problem, its answers worked out by hand with g = 9.81: 11 kg at 11 degrees 283 N,
// at 48 degrees 72.6 N.
TEST_CASE("A steeper cord under the same picture is pulled far less") {
    const Newtons weight{11 * 9.81};
    CHECK(at_angle(11, weight).tension.value == Approx(283).margin(0.5));
    CHECK(at_angle(48, weight).tension.value == Approx(72.6).margin(0.05));
}

// An exam question: string of 500 mm over a nail, frame 200 mm wide, 10 N: 23.6 degrees from the
// vertical (the tension of 5.46 N worked out by hand).
TEST_CASE("A string of 500 mm on a frame 200 mm wide stands 23.6 degrees from the vertical") {
    const auto cord = over_one_hook(200, 500, {10});
    REQUIRE(cord);
    CHECK(90 - cord->angle_deg == Approx(23.6).margin(0.05));
    CHECK(cord->tension.value == Approx(5.46).margin(0.005));
    CHECK(cord->hook_down.value == 10);
}

// The 8-15-17 triangle: half the spacing 150, half the cord 170, so the drop is 80 exactly.
TEST_CASE("A cord of 340 mm between rings 300 mm apart rises 80 mm") {
    const auto cord = over_one_hook(300, 340, {16});
    REQUIRE(cord);
    CHECK(cord->drop == Approx(80).epsilon(1e-12));
    CHECK(cord->angle_deg == Approx(28.07).margin(0.005));
    CHECK(cord->tension.value == Approx(17).epsilon(1e-12));
    CHECK(cord->inward_pull.value == Approx(15).epsilon(1e-12));
}

// Worked out by hand: run 75, side 95.
TEST_CASE("The same cord over two hooks 150 mm apart stands steeper and pulls them together") {
    const auto cord = over_two_hooks(300, 150, 340, {1});
    REQUIRE(cord);
    CHECK(cord->drop == Approx(58.3).margin(0.05));
    CHECK(cord->angle_deg == Approx(37.86).margin(0.005));
    CHECK(cord->tension.value == Approx(0.8146).margin(0.00005));
    CHECK(cord->hook_down.value == 0.5);
    CHECK(cord->hook_sideways.value == Approx(0.171).margin(0.0005));
}

TEST_CASE("A cord not longer than its rings are apart is refused") {
    CHECK_FALSE(over_one_hook(300, 300, {10}));
    CHECK_FALSE(over_one_hook(300, 250, {10}));
    CHECK_FALSE(over_two_hooks(300, 100, 300, {10}));
    CHECK(over_one_hook(300, 299, {10}).error().what ==
          "the cord is not longer than its rings are apart");
    CHECK(over_one_hook(300, 299, {10}).error().remedy == "take a longer cord");
}

TEST_CASE("Rings in one place and hooks as wide apart as the rings are refused") {
    CHECK_FALSE(over_one_hook(0, 300, {10}));
    CHECK_FALSE(over_two_hooks(300, 300, 400, {10}));
    CHECK_FALSE(over_two_hooks(300, 0, 400, {10}));
}

TEST_CASE("Forces are in balance at every hook and on the frame") {
    rc::prop("for any cord", [] {
        const Case one = some_case();
        const bool two_hooks = *rc::gen::arbitrary<bool>();
        RC_PRE(one.hooks < one.spacing);
        const auto cord = two_hooks ? over_two_hooks(one.spacing, one.hooks, one.length, one.weight)
                                    : over_one_hook(one.spacing, one.length, one.weight);
        RC_ASSERT(cord.has_value());
        const double weight = one.weight.value;
        const double hooks = two_hooks ? one.hooks : 0;
        // The legs as vectors from ring to hook, from the geometry alone.
        const double run = (one.spacing - hooks) / 2;
        const double side = std::hypot(run, cord->drop);
        const auto near = [&](double a, double b) {
            return std::abs(a - b) <= 1e-6 * std::max(weight, cord->tension.value);
        };
        RC_ASSERT(std::abs(2 * side + hooks - one.length) < 1e-6 * one.length);
        const double up = cord->tension.value * cord->drop / side;
        const double inward = cord->tension.value * run / side;
        // Frame: both legs lift it, and press its sides together with the same force.
        RC_ASSERT(near(2 * up, weight));
        RC_ASSERT(near(inward, cord->inward_pull.value));
        // Hook: all that pulls it down is one leg, or both; the level stretch pulls in, the leg
        // out.
        RC_ASSERT(near(cord->hook_down.value, two_hooks ? up : 2 * up));
        RC_ASSERT(near(cord->hook_sideways.value, two_hooks ? cord->tension.value - inward : 0));
    });
}

}  // namespace wallwright::hanging
