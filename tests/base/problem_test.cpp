#include "base/problem.h"

#include <catch2/catch.hpp>

using namespace wallwright;

TEST_CASE("A problem reads as place, what is wrong, what to do") {
    const Problem problem{"wall.json: pieces/kelp", "the width is 0 mm", "measure the frame", ""};
    CHECK(to_text(problem) == "wall.json: pieces/kelp: the width is 0 mm; measure the frame");
}

TEST_CASE("A problem without a place or a remedy is only what is wrong") {
    CHECK(to_text({"", "the disk is full", "", ""}) == "the disk is full");
}

TEST_CASE("A place is put in front of the place already known") {
    CHECK(within("frames.csv", {"line 4", "no title", "", ""}).where == "frames.csv: line 4");
    CHECK(within("frames.csv", {"", "no title", "", ""}).where == "frames.csv");
}

TEST_CASE("The caret stands below the place, counting characters and not bytes") {
    CHECK(point_at("40 cm", 3) == "  40 cm\n     ^");
    CHECK(point_at("12½ qq", 5) == "  12½ qq\n      ^");
    CHECK(point_at("a\tb", 2) == "  a\tb\n   \t^");
}
