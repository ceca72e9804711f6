#include "pages/typesetting.h"

#include "draw/labels.h"
#include "pages/render.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::pages;

TEST_CASE("A text's width grows with its size") {
    CHECK(text_width("", 2.5, false) == 0);
    CHECK(text_width("1820", 5, false) == Approx(2 * text_width("1820", 2.5, false)).epsilon(0.01));
    CHECK(text_width("1820", 2.5, true) > text_width("1820", 2.5, false));
}

// draw/ keeps labels apart by an estimate, since it cannot measure: it must not be too small.
TEST_CASE("The estimate of a label's width is no less than what is painted") {
    for (const char* words :
         {"60", "1820", "145 11/16", "16 1/2", "centre line 1500", "level line 59 1/16",
          "group 1820 = 0.96 of the sofa, all gaps 60", "BH", "Lighthouse at low water",
          "Dune path", "WIMMW", "Φύκια", "école é"})
        for (const bool bold : {false, true}) {
            CAPTURE(words, bold);
            const double painted = text_width(words, 1.8, bold);
            CHECK(draw::estimated_width(words, 1.8, bold) >= painted);
            CHECK(draw::estimated_width(words, 1.8, bold) < 1.6 * painted);
        }
}

TEST_CASE("Lines are broken between words and none is wider than asked") {
    const std::string text = "Zones say where cables should be, not where they are.";
    const std::vector<std::string> lines = lines_of(text, {2.2, false}, 40);
    REQUIRE(lines.size() > 1);
    std::string joined;
    for (const std::string& line : lines) {
        CHECK(text_width(line, 2.2, false) <= 40);
        joined += (joined.empty() ? "" : " ") + line;
    }
    CHECK(joined == text);
}

TEST_CASE("A number and its fraction are never parted by the end of a line") {
    const std::string text = "Hang it 1 1/4 in to the left and 16 15/16 in up, 3 or 1/2 in off";
    bool broken = false;
    for (double width = 12; width < 60; width += 0.5) {
        for (const std::string& line : lines_of(text, {2.2, false}, width)) {
            CAPTURE(width, line);
            CHECK_FALSE(line.starts_with("1/4"));
            CHECK_FALSE(line.starts_with("15/16"));
            broken = broken || line.starts_with("1/2");
        }
    }
    // Where no number is before it, a fraction begins a line as any word.
    CHECK(broken);
}

TEST_CASE("A word wider than the line is broken") {
    const auto lines = lines_of("Donaudampfschifffahrtsgesellschaft", {2.2, false}, 20);
    CHECK(lines.size() > 1);
    for (const std::string& line : lines)
        CHECK(text_width(line, 2.2, false) <= 20.5);
}

TEST_CASE("Nothing to set is one empty line") {
    CHECK(lines_of("", {2.2, false}, 20) == std::vector<std::string>{""});
}

TEST_CASE("A text that fits is not shortened, a longer one ends in dots") {
    CHECK(shortened("Tern", {2.2, false}, 40) == "Tern");
    const std::string cut = shortened("Lighthouse at low water", {2.2, false}, 20);
    CHECK(cut.ends_with("…"));
    CHECK(text_width(cut, 2.2, false) <= 20);
}

TEST_CASE("Few lines keep the first and shorten the last") {
    const std::string text =
        "The attic room on the south side above the stairs where the cat sleeps";
    const auto lines = few_lines(text, {2.2, false}, 40, 2);
    REQUIRE(lines.size() == 2);
    CHECK(lines.front() == lines_of(text, {2.2, false}, 40).front());
    CHECK(lines.back().ends_with("…"));
}

TEST_CASE("Any bytes can be set: broken UTF-8, line breaks, control characters") {
    rc::prop("without a line break and within the width", [](const std::string& bytes) {
        for (const std::string& line : lines_of(bytes, {2.2, false}, 60)) {
            RC_ASSERT(line.find('\n') == std::string::npos);
            RC_ASSERT(text_width(line, 2.2, false) <= 60.5);
        }
    });
}

TEST_CASE("A letter that no font has becomes a square of its line's height") {
    // U+10FFFD is for private use, so no font has it.
    CHECK(lines_of("a\xF4\x8F\xBF\xBD"
                   "b",
                   {2.2, false}, 60) == std::vector<std::string>{"a□b"});
}
