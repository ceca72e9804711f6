#include "wall/date.h"

#include <catch2/catch.hpp>

using namespace wallwright::wall;

TEST_CASE("A day is read as ISO 8601 writes it, and written so again") {
    const auto day = date_named("2026-11-25");
    REQUIRE(day);
    CHECK(text_of(*day) == "2026-11-25");
    CHECK(spoken(*day) == "25 November 2026");
    CHECK(text_of(*date_named("1000-01-01")) == "1000-01-01");
}

TEST_CASE("What is no day of the calendar is none") {
    for (const char* text :
         {"", "2026-11-31", "2026-13-01", "2026-00-10", "2026-02-29", "0999-01-01", "2026-1-1",
          "26-11-25", "2026/11/25", "2026-11-25 ", "2026-+1-25", "today", "20261-1-25"}) {
        INFO(text);
        CHECK_FALSE(date_named(text));
    }
    CHECK(date_named("2024-02-29"));
}

TEST_CASE("Days later run over the ends of months and years") {
    CHECK(text_of(later(*date_named("2026-12-28"), 7)) == "2027-01-04");
    CHECK(text_of(later(*date_named("2024-02-26"), 7)) == "2024-03-04");
    CHECK(later(*date_named("2026-05-05"), 0) == *date_named("2026-05-05"));
}
