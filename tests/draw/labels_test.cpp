#include "draw/labels.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Rect;
using geometry::Wall;

namespace {

Text<Wall> text_of(const std::string& words, Align align, bool upward = false) {
    Text<Wall> text{{1000, 500}, words};
    text.size = 2;
    text.align = align;
    text.upward = upward;
    return text;
}

}  // namespace

TEST_CASE("The estimate of a width grows with the text and its size") {
    CHECK(estimated_width("", 2.5) == 0);
    CHECK(estimated_width("1820", 2.5) > estimated_width("182", 2.5));
    CHECK(estimated_width("1820", 5) == Approx(2 * estimated_width("1820", 2.5)));
    CHECK(estimated_width("1820", 2.5, true) > estimated_width("1820", 2.5));
}

TEST_CASE("A letter of several bytes counts once") {
    CHECK(estimated_width("é", 2) < 2 * estimated_width("e", 2));
    CHECK(estimated_width("砂", 2) > estimated_width("e", 2));
}

TEST_CASE("A text's box lies on the side that its alignment says") {
    const double width = estimated_width("1820", 2) / 0.05;
    CHECK(estimated_box(text_of("1820", Align::left), 0.05).min.x == Approx(1000));
    CHECK(estimated_box(text_of("1820", Align::right), 0.05).max.x == Approx(1000));
    CHECK(estimated_box(text_of("1820", Align::centre), 0.05).min.x == Approx(1000 - width / 2));
    CHECK(estimated_box(text_of("1820", Align::left), 0.05).max.y == Approx(540));
}

TEST_CASE("A text that reads upward stands to the left of its base line") {
    const Rect<Wall> box = estimated_box(text_of("1820", Align::left, true), 0.05);
    CHECK(box.min.x == Approx(960));
    CHECK(box.min.y == Approx(500));
    CHECK(box.height() == Approx(estimated_width("1820", 2) / 0.05));
}

TEST_CASE("Room that is taken is not free, but its edge may be touched") {
    LabelRoom room;
    room.take({{0, 0}, {10, 10}});
    CHECK_FALSE(room.is_free({{5, 5}, {15, 15}}));
    CHECK(room.is_free({{10, 0}, {20, 10}}));
    CHECK(room.is_free({{0, 20}, {10, 30}}));
}

TEST_CASE("A name is broken at spaces and cut off with dots after its last line") {
    const double width = estimated_width("Lighthouse at", 1.8) + 0.1;
    const std::vector<std::string> lines = wrapped("Lighthouse at low water", 1.8, width, 2);
    REQUIRE(lines.size() == 2);
    CHECK(lines[0] == "Lighthouse at");
    CHECK(lines[1] == "low water");
    const std::vector<std::string> cut =
        wrapped("Lighthouse at low water, second state", 1.8, width, 2);
    REQUIRE(cut.size() == 2);
    CHECK(cut[1].substr(cut[1].size() - 3) == "...");
}

TEST_CASE("A name without letters has no lines") {
    CHECK(wrapped("", 1.8, 20, 2).empty());
    CHECK(wrapped("   ", 1.8, 20, 2).empty());
}

TEST_CASE("No line of a broken name is wider than asked") {
    rc::prop("as estimated", [](const std::string& text) {
        for (const std::string& line : wrapped(text, 1.8, 15, 2))
            RC_ASSERT(estimated_width(line, 1.8) <= 15.0);
    });
}

TEST_CASE("Cutting a name leaves whole letters") {
    for (const std::string& line : wrapped("砂丘の道砂丘の道砂丘の道", 1.8, 15, 1)) {
        CHECK((line.size() - 3) % 3 == 0);
        CHECK(line.size() > 3);
    }
}
