#include "draw/letters.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <set>

using namespace wallwright;
using draw::letter;

TEST_CASE("Pieces are lettered A to Z and then with two letters") {
    CHECK(letter(0) == "A");
    CHECK(letter(25) == "Z");
    CHECK(letter(26) == "AA");
    CHECK(letter(51) == "AZ");
    CHECK(letter(52) == "BA");
    CHECK(letter(26 + 26 * 26) == "AAA");
}

TEST_CASE("No two pieces share a letter") {
    std::set<std::string> seen;
    for (std::size_t i = 0; i < 2000; ++i)
        CHECK(seen.insert(letter(i)).second);
}

TEST_CASE("A piece's letter is its place in the project, whether it hangs or waits") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_waiting(project, "tern", {300, 400});
    scenes::add_piece(project, "kelp", {100, 1000}, {300, 400});
    CHECK(draw::letter_of(project, {"tern"}) == "A");
    CHECK(draw::letter_of(project, {"kelp"}) == "B");
    CHECK(draw::letter_of(project, {"nobody"}).empty());
}
