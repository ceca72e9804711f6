#include "store/text_place.h"

#include <catch2/catch.hpp>

namespace wallwright::store {

TEST_CASE("A place is a line counted from one and an excerpt with a caret") {
    const TextPlace place = place_in("one\ntwo\r\nthree", 5);
    CHECK(place.line == 2);
    CHECK(place.excerpt == "  two\n   ^");
}

TEST_CASE("A place beyond the end is the end") {
    CHECK(place_in("one\ntwo", 99).excerpt == "  two\n     ^");
    CHECK(place_in("", 0).excerpt == "  \n  ^");
}

TEST_CASE("Of a long line only the part around the place is shown, cut between characters") {
    std::string line;
    for (int i = 0; i < 100; ++i)
        line += "é";
    const TextPlace place = place_in(line, 101);
    CHECK(place.excerpt.size() < 200);
    CHECK(place.excerpt.starts_with("  é"));
    CHECK_FALSE(first_bad_utf8(place.excerpt));
}

TEST_CASE("Control characters and broken ones are not sent to the terminal") {
    CHECK(place_in(std::string_view("a\x1B[31m\0b", 8), 0).excerpt == "  a?[31m?b\n  ^");
    CHECK(place_in("K\xFCste", 1).excerpt == "  K?ste\n   ^");
}

// RFC 3629, section 4 (the syntax of UTF-8) and section 10 (overlong forms).
TEST_CASE("UTF-8 is told from what only looks like it") {
    CHECK_FALSE(first_bad_utf8("plain, é, 潮, 🌊"));
    CHECK(first_bad_utf8("ab\xC0\xAF") == 2);        // overlong "/"
    CHECK(first_bad_utf8("\xE0\x9F\xBF") == 0);      // overlong, three bytes
    CHECK(first_bad_utf8("\xF0\x8F\xBF\xBF") == 0);  // overlong, four bytes
    CHECK(first_bad_utf8("\xED\xA0\x80") == 0);      // a surrogate
    CHECK(first_bad_utf8("\xF4\x90\x80\x80") == 0);  // beyond U+10FFFF
    CHECK(first_bad_utf8("a\x80") == 1);             // a lone continuation
    CHECK(first_bad_utf8("a\xE6\xBD") == 1);         // cut short
    CHECK(first_bad_utf8("a\xE6Z\xAE") == 1);        // broken off by another character
    CHECK_FALSE(
        first_bad_utf8("\xF4\x8F\xBF\xBF\xED\x9F\xBF\xEE\x80\x80"));  // the last of each range
}

TEST_CASE("A long text is shortened between characters") {
    CHECK(shortened("kelp", 4) == "kelp");
    CHECK(shortened("kelps", 4) == "kelp...");
    CHECK(shortened("aéb", 2) == "a...");
}

}  // namespace wallwright::store
