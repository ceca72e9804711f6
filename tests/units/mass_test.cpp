#include "units/mass.h"

#include "support/command.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::units;

namespace {

double kg(const std::string& text) {
    const auto mass = parse_mass(text);
    INFO(text << (mass ? "" : ": " + to_text(mass.error())));
    REQUIRE(mass.has_value());
    return mass->value;
}

}  // namespace

TEST_CASE("Weights are read the way a kitchen scale or a packet says them") {
    CHECK(kg("1.2 kg") == Approx(1.2));
    CHECK(kg("1,2 kg") == Approx(1.2));
    CHECK(kg("850 g") == Approx(0.85));
    CHECK(kg("850g") == Approx(0.85));
    CHECK(kg("2.5") == 2.5);
    CHECK(kg("2 lb 6 oz") == Approx(1.07728));
    CHECK(kg("2 lb 6") == Approx(1.07728));
    CHECK(kg("14 oz") == Approx(0.396893));
}

TEST_CASE("A weight that is not understood says which units are known") {
    CHECK(to_text(parse_mass("3 stone").error()) ==
          "\"stone\" is not a unit of weight; use kg, g, lb or oz\n  3 stone\n    ^");
    CHECK_FALSE(parse_mass("-1 kg").has_value());
    CHECK_FALSE(parse_mass("2000 kg").has_value());
    CHECK_FALSE(parse_mass("1 kg 2").has_value());
}

// GNU units is the outside check for pounds and ounces, and for standard gravity.
TEST_CASE("Pounds, ounces and gravity agree with GNU units") {
    CHECK(kg("10 lb") == Approx(std::stod(test::run("units -t '10 lb' kg").out)).epsilon(1e-7));
    CHECK(kg("7 oz") == Approx(std::stod(test::run("units -t '7 oz' kg").out)).epsilon(1e-5));
    CHECK(weight_of(Kilograms{1}).value ==
          Approx(std::stod(test::run("units -t 'kg gravity' N").out)).epsilon(1e-7));
}

TEST_CASE("Small weights are shown in grams, and in ounces where the person reads inches") {
    CHECK(format_mass(Kilograms{0.8496}, LengthUnit::mm) == "850 g");
    CHECK(format_mass(Kilograms{1.239}, LengthUnit::cm) == "1.24 kg");
    CHECK(format_mass(Kilograms{1.07728}, LengthUnit::inch) == "2 lb 6 oz");
    CHECK(format_mass(Kilograms{0.2}, LengthUnit::inch) == "7 oz");
    CHECK(format_force(Newtons{1.234}, LengthUnit::mm) == "1.2 N");
    // 1 lbf = 4.4482216152605 N by definition (NIST SP 811, from memory).
    CHECK(format_force(Newtons{44.482}, LengthUnit::inch) == "10.0 lbf");
}

TEST_CASE("Weight and mass turn into each other") {
    rc::prop("mass_with_weight undoes weight_of", [] {
        const double mass = *rc::gen::inRange(0, 100000) / 1000.0;
        RC_ASSERT(std::abs(mass_with_weight(weight_of(Kilograms{mass})).value - mass) < 1e-9);
    });
}
