#include "rules/judge.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;

TEST_CASE("A length passes a bound by more than a hair") {
    CHECK_FALSE(exceeds(75, 75));
    CHECK_FALSE(exceeds(75.04, 75));
    CHECK(exceeds(75.06, 75));
    CHECK_FALSE(exceeds(74, 75));
}

TEST_CASE("A finding carries its measure with the unit, or neither") {
    const geometry::Rect<geometry::Wall> place{{1, 2}, {3, 4}};
    const wall::Finding measured =
        finding(wall::Severity::mind, {{"kelp"}}, place, Measure{90, 75}, "Too wide.");
    CHECK(measured.severity == wall::Severity::mind);
    CHECK(measured.pieces == std::vector<wall::PieceId>{{"kelp"}});
    CHECK(measured.place == place);
    CHECK(measured.measured == 90);
    CHECK(measured.wanted == 75);
    CHECK(measured.unit == "mm");
    CHECK(measured.text == "Too wide.");

    const wall::Finding plain = finding(wall::Severity::stop, {}, place, std::nullopt, "Wait.");
    CHECK_FALSE(plain.measured.has_value());
    CHECK_FALSE(plain.wanted.has_value());
    CHECK(plain.unit.empty());
}
