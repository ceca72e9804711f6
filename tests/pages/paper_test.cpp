#include "pages/paper.h"

#include <catch2/catch.hpp>

using namespace wallwright::pages;

TEST_CASE("Papers are found by name in either case") {
    CHECK(paper_named("A4") == Paper::a4);
    CHECK(paper_named("letter") == Paper::letter);
    CHECK_FALSE(paper_named("foolscap").has_value());
}

// ISO 216 and, for Letter, 8 1/2 by 11 in (ANSI/ASME Y14.1).
TEST_CASE("Papers have the sizes of their standards") {
    CHECK(size_of(Paper::a4) == wallwright::geometry::Size{210, 297});
    CHECK(size_of(Paper::a3) == wallwright::geometry::Size{297, 420});
    CHECK(size_of(Paper::letter).width == Approx(8.5 * 25.4));
    CHECK(size_of(Paper::letter).height == Approx(11 * 25.4));
}
