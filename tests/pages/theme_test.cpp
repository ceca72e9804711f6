#include "pages/theme.h"

#include "draw/tint.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using draw::Ink;
using draw::Paint;
using pages::colour_of;

namespace {

constexpr Ink kTextInks[] = {Ink::outline,    Ink::dimension, Ink::accent, Ink::hidden, Ink::text,
                             Ink::quiet_text, Ink::mark,      Ink::stop,   Ink::mind,   Ink::good};

double contrast_of(Ink ink, wall::Colour behind) {
    return draw::contrast(colour_of(Paint{ink}), behind);
}

}  // namespace

// WCAG 2.1, success criterion 1.4.3 (AA): 4.5 for text.
TEST_CASE("Every ink for text can be read on paper and on the floor") {
    for (const Ink ink : kTextInks) {
        CAPTURE(wall::name_of(ink));
        CHECK(contrast_of(ink, colour_of(Paint{Ink::paper})) >= 4.5);
        CHECK(contrast_of(ink, colour_of(Paint{Ink::floor})) >= 4.5);
    }
}

TEST_CASE("Every ink for text can be read on any wall") {
    rc::prop("as it is washed", [](std::uint8_t red, std::uint8_t green, std::uint8_t blue) {
        for (const Ink ink : kTextInks)
            RC_ASSERT(contrast_of(ink, draw::wash({red, green, blue})) >= 4.5);
    });
}

TEST_CASE("A paint of its own brings its colour along") {
    CHECK(colour_of(draw::own({1, 2, 3})) == wall::Colour{1, 2, 3});
}
