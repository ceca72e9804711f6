#include "draw/dimensions.h"

#include "draw/board_for_tests.h"
#include "draw/looking.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Wall;
using spacing::Axis;
using test::BoardFor;

namespace {

Chain chain(Axis axis, double line, std::vector<double> stops) {
    Chain made{axis, line, {}};
    for (const double stop : stops)
        made.stops.push_back({stop, 0});
    return made;
}

std::vector<std::string> figures(const BoardFor& scene) {
    std::vector<std::string> words;
    for (const test::WallText& text : test::texts_in(scene.drawing()))
        words.push_back(text.text);
    return words;
}

}  // namespace

TEST_CASE("A chain has a figure for each distance, above its line and in its middle") {
    BoardFor scene(scenes::wall_of(3000, 2400));
    add_chains(scene.board(), {chain(Axis::horizontal, 2600, {0, 800, 3000})});
    CHECK(figures(scene) == std::vector<std::string>{"800", "2200"});
    const auto texts = test::texts_in(scene.drawing());
    CHECK(texts[0].at.x == Approx(400));
    CHECK(texts[0].at.y > 2600);
    CHECK_FALSE(texts[0].upward);
}

TEST_CASE("An upright chain reads from the right, its figures left of its line") {
    BoardFor scene(scenes::wall_of(3000, 2400));
    add_chains(scene.board(), {chain(Axis::vertical, -200, {0, 2400})});
    const auto texts = test::texts_in(scene.drawing());
    REQUIRE(texts.size() == 1);
    CHECK(texts[0].upward);
    CHECK(texts[0].at.x < -200);
    CHECK(texts[0].at.y == Approx(1200));
}

TEST_CASE("The order of stops does not matter, and two in one place are one") {
    BoardFor scene(scenes::wall_of(3000, 2400));
    add_chains(scene.board(), {chain(Axis::horizontal, 2600, {3000, 0, 800, 800.2})});
    CHECK(figures(scene) == std::vector<std::string>{"800", "2200"});
}

TEST_CASE("A chain with one stop measures nothing") {
    BoardFor scene(scenes::wall_of(3000, 2400));
    add_chains(scene.board(), {chain(Axis::horizontal, 2600, {800})});
    CHECK(figures(scene).empty());
}

TEST_CASE("A figure too wide for its distance stands beyond the chain's end") {
    BoardFor scene(scenes::wall_of(3000, 2400));
    add_chains(scene.board(), {chain(Axis::horizontal, 2600, {0, 40, 3000})});
    const auto texts = test::texts_in(scene.drawing());
    REQUIRE(texts.size() == 2);
    CHECK(texts[0].text == "40");
    CHECK(texts[0].at.x < 0);
}

TEST_CASE("A figure too wide for its distance in a chain's middle is lifted") {
    BoardFor scene(scenes::wall_of(3000, 2400));
    add_chains(scene.board(), {chain(Axis::horizontal, 2600, {0, 1000, 1060, 3000})});
    const auto texts = test::texts_in(scene.drawing());
    REQUIRE(texts.size() == 3);
    CHECK(texts[1].text == "60");
    CHECK(texts[1].at.y > texts[0].at.y);
}

TEST_CASE("A figure makes way for an extension line of a chain further out") {
    BoardFor scene(scenes::wall_of(3000, 2400));
    Chain outer{Axis::horizontal, 2800, {{0, 2400}, {500, 2400}}};
    Chain inner{Axis::horizontal, 2600, {{0, 2400}, {1000, 2400}}};
    add_chains(scene.board(), {inner, outer});
    const auto texts = test::texts_in(scene.drawing());
    REQUIRE(texts.size() == 2);
    CHECK(texts[0].text == "1000");
    CHECK(std::abs(texts[0].at.x - 500) > 50);
}

TEST_CASE("Figures are in the person's unit") {
    wall::Project project = scenes::wall_of(3000, 2400);
    project.unit = units::LengthUnit::inch;
    BoardFor scene(project);
    add_chains(scene.board(), {chain(Axis::horizontal, 2600, {0, 419.1})});
    CHECK(figures(scene) == std::vector<std::string>{"16 1/2"});
}

TEST_CASE("Dimension lines are thin, their strokes go up to the right") {
    // ISO 128-2: narrow lines; ISO 129-1: an oblique stroke at 45 degrees ends a dimension line.
    BoardFor scene(scenes::wall_of(3000, 2400));
    add_dimension_line(scene.board(), Axis::horizontal, 100, 0, 500);
    const auto paths = test::shapes_in<Path<Wall>>(scene.drawing().shapes);
    REQUIRE(paths.size() == 3);
    CHECK(paths[0].stroke->width == Approx(0.18));
    for (const std::size_t stroke : {1U, 2U}) {
        const geometry::Vec<Wall> along = paths[stroke].steps[0].to - paths[stroke].start;
        CHECK(along.x == Approx(along.y));
        CHECK(along.x > 0);
    }
}

TEST_CASE("An extension line starts off what it measures and passes the dimension line") {
    BoardFor scene(scenes::wall_of(3000, 2400));
    add_extension(scene.board(), {100, 2000}, {100, 2600});
    const auto paths = test::shapes_in<Path<Wall>>(scene.drawing().shapes);
    REQUIRE(paths.size() == 1);
    CHECK(paths[0].start.y > 2000);
    CHECK(paths[0].steps[0].to.y > 2600);
}

TEST_CASE("A figure without room in its span reads across the line where the chain allows it") {
    BoardFor scene(scenes::wall_of(3000, 2400));
    Chain narrow = chain(Axis::horizontal, 2600, {0, 1400, 1500, 3000});
    narrow.crosswise = true;
    add_chains(scene.board(), {narrow});
    const auto texts = test::texts_in(scene.drawing());
    REQUIRE(texts.size() == 3);
    CHECK(texts[1].text == "100");
    CHECK(texts[1].upward);
    CHECK(texts[1].at.x == Approx(1450).margin(40));
}
