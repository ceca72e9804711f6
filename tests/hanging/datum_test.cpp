#include "hanging/datum_label.h"
#include "hanging/marks.h"
#include "marked.h"

#include <catch2/catch.hpp>

#include <cmath>

namespace wallwright::hanging {

namespace {

using geometry::Point;
using geometry::Wall;
using wall::DatumHeight;
using wall::DatumSide;
using wall::HangerType;
using wall::Project;

}  // namespace

TEST_CASE("Every datum has its words") {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_hung(project, "kelp", {1000, 1300}, {400, 500});
    CHECK(datum_words(project) == "the floor and the left corner");
    project.datum.height = DatumHeight::level_line;
    project.datum.level_line = 1450;
    project.datum.side = DatumSide::right;
    CHECK(datum_words(project) == "a level line 1450 mm above the floor and the right corner");
    CHECK(datum_label(project) == "level line 1450 mm, right corner");
    project.datum.height = DatumHeight::piece;
    project.datum.piece = wall::PieceId{"kelp"};
    CHECK(datum_words(project) == "the top and the right edge of Kelp");
    CHECK(datum_label(project) == "Kelp, right edge");
    CHECK(across_words(project.datum) == "across from its right edge");
    project.datum.height = DatumHeight::ceiling;
    CHECK(datum_words(project) == "the ceiling and the right corner");
    CHECK(how_to_measure(project) ==
          "Across: level, from the right corner. Down: plumb, from the ceiling right above the "
          "mark.");
}

TEST_CASE("A level line is proposed in reach, past what hangs and stands, and near the marks") {
    Project project = scenes::wall_of(3600, 2400);
    add(project, "kelp", {1000, 1300}, HangerType::sawtooth);
    const auto line = [&project] {
        return proposed_level_line(project, hang_all(project, scenes::small_catalogue()));
    };
    // The mark is 1785 mm up, above what a person reaches with a level.
    CHECK(line() == 1700);
    scenes::add_hung(project, "reef", {2000, 1500}, {400, 600});
    CHECK(line() == 1500);
    scenes::add_furniture(project, wall::FurnitureType::bookcase, {{3000, 0}, {3500, 1600}});
    project.pieces.back().at = Point<Wall>{2000, 1650};
    CHECK(line() == 1650);
    project.unit = units::LengthUnit::inch;
    CHECK(std::fmod(line() + 1e-6, 50.8) < 1e-3);
}

TEST_CASE("Under a low roof a level line is proposed where the wall is there") {
    Project project = scenes::attic_of(4000, 1000, 3000);
    add(project, "kelp", {3000, 1300}, HangerType::sawtooth);
    const double line = proposed_level_line(project, hang_all(project, scenes::small_catalogue()));
    CHECK(line == 950);
}

}  // namespace wallwright::hanging
