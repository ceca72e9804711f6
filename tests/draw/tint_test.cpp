#include "draw/tint.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::draw;
using wall::Colour;

TEST_CASE("Contrast is 21 between black and white and 1 with itself") {
    // WCAG 2.1, definitions of relative luminance and contrast ratio: black on white is 21:1.
    CHECK(contrast({0, 0, 0}, {255, 255, 255}) == Approx(21));
    CHECK(contrast({10, 200, 40}, {10, 200, 40}) == Approx(1));
}

TEST_CASE("The grey #767676 just passes 4.5 on white") {
    // WCAG 2.1, Understanding 1.4.3, names #767676 as the lightest grey that passes on white (from
    // memory).
    CHECK(contrast({0x76, 0x76, 0x76}, {255, 255, 255}) >= 4.5);
    CHECK(contrast({0x77, 0x77, 0x77}, {255, 255, 255}) < 4.5);
}

TEST_CASE("Mixing ends at both colours") {
    const Colour teal{0x0B, 0x58, 0x5E};
    CHECK(mixed(teal, {255, 0, 10}, 0) == teal);
    CHECK(mixed(teal, {255, 0, 10}, 1) == Colour{255, 0, 10});
    CHECK(lighter(teal, 1) == Colour{255, 255, 255});
    CHECK(darker(teal, 1) == Colour{0, 0, 0});
}

TEST_CASE("A pale wall keeps its colour as a wash") {
    CHECK(wash({0xE3, 0xE6, 0xDF}) == Colour{0xE3, 0xE6, 0xDF});
}

TEST_CASE("Any wall's wash is light enough for figures") {
    rc::prop("a wash is at least as light as 0.74",
             [](std::uint8_t red, std::uint8_t green, std::uint8_t blue) {
                 RC_ASSERT(luminance(wash({red, green, blue})) >= 0.74);
             });
}
