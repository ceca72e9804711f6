#include "units/length.h"

#include "support/command.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::units;

namespace {

double mm(const std::string& text, LengthUnit bare = LengthUnit::mm) {
    const auto length = parse_length(text, bare);
    INFO(text << (length ? "" : ": " + to_text(length.error())));
    REQUIRE(length.has_value());
    return *length;
}

std::string complaint(const std::string& text) {
    const auto length = parse_length(text, LengthUnit::mm);
    INFO(text);
    REQUIRE_FALSE(length.has_value());
    return to_text(length.error());
}

}  // namespace

TEST_CASE("A bare number is in the person's unit") {
    CHECK(mm("42") == 42);
    CHECK(mm("42", LengthUnit::cm) == 420);
    CHECK(mm("10", LengthUnit::inch) == 254);
}

TEST_CASE("Lengths are read the way people write them") {
    CHECK(mm("420mm") == 420);
    CHECK(mm("42 cm") == 420);
    CHECK(mm("31,5 cm") == Approx(315));
    CHECK(mm("1.2 m") == Approx(1200));
    CHECK(mm("16 1/2 in") == Approx(419.1));
    CHECK(mm("16-1/2\"") == Approx(419.1));
    CHECK(mm("16.5\"") == Approx(419.1));
    CHECK(mm("16½ in") == Approx(419.1));
    CHECK(mm("3/8 in") == Approx(9.525));
    CHECK(mm("½\"") == Approx(12.7));
    CHECK(mm("1' 4\"") == Approx(406.4));
    CHECK(mm("1 ft 4 1/2 in") == Approx(419.1));
    CHECK(mm("1'4") == Approx(406.4));
    CHECK(mm("5′ 7″") == Approx(1701.8));
    CHECK(mm(" -3 mm ") == -3);
    CHECK(mm(".5 in") == Approx(12.7));
    CHECK(mm("0,125 m") == Approx(125));
}

TEST_CASE("A length that is not understood is pointed at, with what to write instead") {
    CHECK(complaint("40 parsecs") ==
          "\"parsecs\" is not a unit of length; use mm, cm, m, in, ft, ' or \"\n  40 parsecs\n     "
          "^");
    CHECK(complaint("") ==
          "a number was expected; write it in digits, such as 420, 42.5 or 16 1/2\n  \n  ^");
    CHECK(complaint("40 cm wide") ==
          "this part is not understood; write one length, such as 42 cm or 16 1/2 in\n  40 cm "
          "wide\n        ^");
    CHECK(complaint("1/0 in").find("a fraction needs a number other than 0") == 0);
    CHECK(complaint("2000000").find("that is longer than a kilometre") == 0);
}

TEST_CASE("A comma that may mean thousands is asked about, never guessed") {
    CHECK(complaint("1,200 mm") ==
          "\"1,200\" may mean 1.200 or 1200; write 1.200 or 1200\n  1,200 mm\n  ^");
}

TEST_CASE("A size must be more than nothing") {
    CHECK_FALSE(parse_size("0", LengthUnit::mm).has_value());
    CHECK_FALSE(parse_size("-4 cm", LengthUnit::mm).has_value());
    CHECK(parse_size("4 cm", LengthUnit::mm).value() == 40);
}

TEST_CASE("Two lengths with an x between are width and height") {
    const auto pair = [](const std::string& text, LengthUnit bare = LengthUnit::mm) {
        const auto size = parse_size_pair(text, bare);
        INFO(text << (size ? "" : ": " + to_text(size.error())));
        REQUIRE(size.has_value());
        return std::pair(size->width_mm, size->height_mm);
    };
    CHECK(pair("300x400") == std::pair(300.0, 400.0));
    CHECK(pair("300 × 400 mm") == std::pair(300.0, 400.0));
    CHECK(pair("30 x 40 cm") == std::pair(300.0, 400.0));
    CHECK(pair("30cmx40cm") == std::pair(300.0, 400.0));
    CHECK(pair("30cm x 40") == std::pair(300.0, 400.0));
    CHECK(pair("10x20", LengthUnit::inch) == std::pair(254.0, 508.0));
    CHECK(pair("12 1/2 x 16 in").first == Approx(317.5));
    CHECK_FALSE(parse_size_pair("300", LengthUnit::mm).has_value());
    CHECK_FALSE(parse_size_pair("300x0", LengthUnit::mm).has_value());
    CHECK_FALSE(parse_size_pair("300x400x5", LengthUnit::mm).has_value());
}

TEST_CASE("Lengths are shown in the person's unit without needless digits") {
    CHECK(format_length(420, LengthUnit::mm) == "420 mm");
    CHECK(format_length(12.34, LengthUnit::mm) == "12.3 mm");
    CHECK(format_length(-0.01, LengthUnit::mm) == "0 mm");
    CHECK(format_length(423.5, LengthUnit::cm) == "42.35 cm");
    CHECK(format_length(419.1, LengthUnit::inch) == "16 1/2 in");
    CHECK(format_length(9.525, LengthUnit::inch) == "3/8 in");
    CHECK(format_length(-9.525, LengthUnit::inch) == "-3/8 in");
    CHECK(format_length(0, LengthUnit::inch) == "0 in");
    CHECK(format_length(25.4 * 15.97, LengthUnit::inch) == "16 in");
}

// GNU units is the outside check: its table of feet, inches and centimetres is not ours.
TEST_CASE("Conversions agree with GNU units") {
    for (const std::string text : {"16.5 in", "7 ft", "31.25 cm", "2.4 m"}) {
        const auto answer = test::run("units -t '" + text + "' mm");
        REQUIRE(answer.status == 0);
        CHECK(mm(text) == Approx(std::stod(answer.out)).epsilon(1e-6));
    }
}

TEST_CASE("What is shown is read back as what was shown") {
    rc::prop("format then parse gives the length rounded to the unit's step", [] {
        const double length = *rc::gen::inRange(-5'000'000, 5'000'000) / 1000.0;
        for (const LengthUnit unit : {LengthUnit::mm, LengthUnit::cm, LengthUnit::inch}) {
            const auto back = parse_length(format_length(length, unit), LengthUnit::mm);
            RC_ASSERT(back.has_value());
            RC_ASSERT(std::abs(*back - rounded(length, unit)) < 1e-6);
        }
    });
}

TEST_CASE("Any text gives a length or a problem, never a crash") {
    rc::prop("parse_length is total", [](const std::string& text) {
        const auto length = parse_length(text, LengthUnit::mm);
        RC_ASSERT((length.has_value() ? std::isfinite(*length) : !length.error().what.empty()));
    });
    rc::prop("so it is on texts of the right letters", [] {
        const auto text = *rc::gen::container<std::string>(
            rc::gen::elementOf(std::string("0123456789.,/-'\" xcmift")));
        const auto size = parse_size_pair(text, LengthUnit::cm);
        RC_ASSERT((size.has_value() ? size->width_mm > 0 && size->height_mm > 0
                                    : !size.error().what.empty()));
    });
}

TEST_CASE("A unit has the name it is written with") {
    for (const LengthUnit unit : {LengthUnit::mm, LengthUnit::cm, LengthUnit::inch})
        CHECK(parse_unit(name_of(unit)).value() == unit);
    CHECK(to_text(parse_unit("furlong").error()) ==
          "\"furlong\" is not a unit this program writes in; use mm, cm or in");
}

TEST_CASE("A tolerance is never shown smaller than it is") {
    CHECK(format_tolerance(1.03, LengthUnit::mm) == "1.1 mm");
    CHECK(format_tolerance(1.0, LengthUnit::mm) == "1 mm");
    CHECK(format_tolerance(1.2, LengthUnit::inch) == "1/16 in");
    CHECK(format_tolerance(1.7, LengthUnit::inch) == "1/8 in");
}

TEST_CASE("A number of hundreds of digits is too long, not nothing") {
    const std::string digits(400, '9');
    CHECK_FALSE(parse_length(digits, LengthUnit::mm).has_value());
    CHECK_FALSE(parse_size_pair("300x" + digits, LengthUnit::mm).has_value());
    CHECK_FALSE(parse_size_pair("3000000x3", LengthUnit::mm).has_value());
}
