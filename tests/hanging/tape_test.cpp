#include "hanging/tape.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>

namespace wallwright::hanging {

using wall::TapeClass;

// Measuring Instruments Directive 2014/32/EU, Annex X (MI-008), Table 1: a, b and c of each class
// in mm, read in legislation.gov.uk (UK S.I. 2016/1153, Schedule 1I).
TEST_CASE("Each tape class has the error of the directive") {
    struct Row {
        TapeClass tape;
        double a;
        double b;
        double c;
    };
    const Row row = GENERATE(Row{TapeClass::one, 0.1, 0.1, 0.1}, Row{TapeClass::two, 0.3, 0.2, 0.2},
                             Row{TapeClass::three, 0.6, 0.4, 0.3});
    CHECK(tape_error(row.tape, 1000, false) == Approx(row.a + row.b));
    CHECK(tape_error(row.tape, 5000, false) == Approx(row.a + 5 * row.b));
    CHECK(tape_error(row.tape, 5000, true) == Approx(row.a + 5 * row.b + row.c));
}

// Worked out by hand from the directive's formula: class II over 1.45 m from its end is 0.3 + 0.2 x
// 2 + 0.2; 2.35 m from mark to mark is 0.3 + 0.2 x 3, from its end 0.2 more; 3 m are 3 already.
TEST_CASE("Metres are rounded up and a whole metre stays whole") {
    CHECK(tape_error(TapeClass::two, 1450, true) == Approx(0.9));
    CHECK(tape_error(TapeClass::two, 2350, false) == Approx(0.9));
    CHECK(tape_error(TapeClass::two, 2350, true) == Approx(1.1));
    CHECK(tape_error(TapeClass::two, 3000, false) == Approx(0.9));
    CHECK(tape_error(TapeClass::two, 3000.001, false) == Approx(1.1));
}

TEST_CASE("Three metres that came out of a sum are still three metres") {
    double sum = 0;
    for (int i = 0; i < 30; ++i)
        sum += 0.1;
    REQUIRE(sum != 3.0);
    CHECK(tape_error(TapeClass::two, sum * 1000, false) == Approx(0.9));
}

TEST_CASE("A length below the level line errs as much as one above it") {
    CHECK(mark_error(TapeClass::two, -450) == mark_error(TapeClass::two, 450));
}

// J. R. Taylor, An Introduction to Error Analysis, pp. 77-79: independent errors add in quadrature
// and never make more than their plain sum.
TEST_CASE("A mark errs more than its tape and less than tape and pencil in plain sum") {
    rc::prop("for any length", [] {
        const auto tape = *rc::gen::element(TapeClass::one, TapeClass::two, TapeClass::three);
        const double length = *rc::gen::inRange(0, 100000) / 10.0;
        const double mark = mark_error(tape, length);
        RC_ASSERT(mark > tape_error(tape, length, true));
        RC_ASSERT(mark < tape_error(tape, length, true) + 0.5);
    });
}

// F. Scholz, Tolerance Stack Analysis Methods (Boeing, 1995): a chain of n links errs n times in
// the worst case and the root of n times by root sum square. A text on that method works ten links
// of 0.1 mm: 1.0 and 0.316 mm.
TEST_CASE("Ten links of 0.1 mm err by 1 mm at worst and likely by 0.316 mm") {
    const std::vector<double> links(10, 0.1);
    CHECK(chain_error(links).worst == Approx(1.0));
    CHECK(chain_error(links).likely == Approx(0.316).margin(0.0005));
    CHECK(chain_error({}).worst == 0);
}

// Makers' data: 0.5 mm in a metre for a good spirit level, 1 for a cheap one, 0.3 for a line laser.
TEST_CASE("A level errs by its millimetres in each metre, to either side") {
    wall::HangingStyle style;
    CHECK(level_error(style, 2000) == Approx(1));
    CHECK(level_error(style, -2000) == Approx(1));
    style.level_error = 0.3;
    CHECK(level_error(style, 3000) == Approx(0.9));
}

TEST_CASE(
    "A mark from the datum errs less than one reached from piece to piece, even by root sum "
    "square") {
    rc::prop("for any row of at least two links", [] {
        const auto tape = *rc::gen::element(TapeClass::one, TapeClass::two, TapeClass::three);
        const double link = *rc::gen::inRange(500, 10001) / 10.0;
        const int links = *rc::gen::inRange(2, 11);
        const double worst = links * mark_error(tape, link);
        const double by_squares = std::sqrt(1.0 * links) * mark_error(tape, link);
        RC_ASSERT(by_squares < worst);
        RC_ASSERT(mark_error(tape, links * link) <= worst);
    });
}

}  // namespace wallwright::hanging
