#include "desk/measures.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;

namespace {

wall::Project wall_with_one() {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "one", {1000, 1300}, {400, 300});
    return project;
}

}  // namespace

TEST_CASE("Measures lead to what is faced on the four sides, or to the wall's edge") {
    wall::Project project = wall_with_one();
    scenes::add_furniture(project, wall::FurnitureType::sofa,
                          Rect<Wall>::at({1500, 0}, {1900, 800}));
    const auto measures = measures_around(project, {}, Rect<Wall>::at({1500, 1400}, {300, 300}));
    REQUIRE(measures.size() == 4);
    CHECK(measures[0].figure == "100");  // left, to the piece
    CHECK(measures[0].line.from == Point<Wall>{1400, 1500});
    CHECK(measures[1].figure == "1800");  // right, to the wall's end
    CHECK(measures[2].figure == "600");   // down, to the sofa
    CHECK(measures[3].figure == "700");   // up, to the ceiling
}

TEST_CASE("Under a slope the measure upward ends at the slope") {
    const wall::Project project = scenes::attic_of(4000, 1000, 3000);
    const auto measures = measures_around(project, {}, Rect<Wall>::at({1800, 500}, {400, 500}));
    CHECK(measures.back().figure == "1000");
}

TEST_CASE("The group of what moves is measured from its centre to the centre line") {
    wall::Project project = wall_with_one();
    scenes::add_piece(project, "two", {1460, 1300}, {400, 400});
    const auto place = Rect<Wall>::at({1460, 1300}, {400, 400});
    // The group reaches from 1300 to 1700, so its centre is on the line.
    CHECK(measures_around(project, {{"two"}}, place).size() == 4);
    project.style.centre_height = 1450;
    const auto measures = measures_around(project, {{"two"}}, place);
    REQUIRE(measures.size() == 5);
    CHECK(measures.back().figure == "50 above the centre line");
    CHECK(measures.back().line.from == Point<Wall>{1430, 1500});
}

TEST_CASE("A size is measured across the thing, away from its handles") {
    const auto measures = measures_of_size(wall_with_one(), Rect<Wall>::at({400, 0}, {800, 400}));
    REQUIRE(measures.size() == 2);
    CHECK(measures[0].figure == "800");
    CHECK(measures[0].line.from == Point<Wall>{400, 100});
    CHECK(measures[1].figure == "400");
    CHECK(measures[1].line.to == Point<Wall>{1000, 400});
}

TEST_CASE("At a corner of the outline both its sides are measured") {
    const auto measures = measures_at_corner(wall_with_one(), 0);
    REQUIRE(measures.size() == 2);
    CHECK(measures[0].figure == "2400");
    CHECK(measures[1].figure == "3600");
}
