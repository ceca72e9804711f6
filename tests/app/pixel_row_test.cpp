#include "app/bench/pixel_row.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::app;

TEST_CASE("Pixels are read with any sign for times, with blanks or without") {
    for (const char* text :
         {"4000x3000", "4000 X 3000", "4000×3000", "  4000 × 3000 ", "4000*3000", "4000\tx 3000"}) {
        CAPTURE(text);
        const auto read = read_pixels(text);
        REQUIRE(read);
        CHECK(read->pixels == wall::PixelSize{4000, 3000});
    }
    for (const char* text : {"", "  "}) {
        const auto read = read_pixels(text);
        REQUIRE(read);
        CHECK_FALSE(read->pixels);
    }
}

TEST_CASE("Anything else is no number of pixels") {
    for (const char* text :
         {"many", "4000", "4000 3000", "abc4000def3000", "4000 x 3000 px", "4000 x", "x 3000",
          "4000 x 3000 x 3", "0 x 3000", "-4000 x 3000", "4000.5 x 3000", "99999999999 x 1"}) {
        CAPTURE(text);
        CHECK_FALSE(read_pixels(text));
    }
}
