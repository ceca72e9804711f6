#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;

namespace {

constexpr const char* kRule = "datum-in-sight";

/// 1500 mm high at the left, 2500 at the right.
wall::Project under_a_roof() {
    wall::Project project = attic_of(4000, 1500, 2500);
    add_piece(project, "kelp", {2600, 1400}, {300, 400});
    hang_on_a_nail(project, "kelp");
    return project;
}

}  // namespace

TEST_CASE("A mark above the low end of a sloping ceiling cannot be measured from that end") {
    wall::Project project = under_a_roof();
    project.datum.side = wall::DatumSide::left;
    const wall::Finding found = only_finding(kRule, project);
    CHECK(found.severity == wall::Severity::mind);
    CHECK(found.text ==
          "The marks of Kelp lie higher or lower than the wall is at its left end, so no tape "
          "reaches them level from there; measure from the right corner.");
    project.datum.side = wall::DatumSide::right;
    CHECK(findings_of(kRule, project).empty());
}

TEST_CASE("A level line must be on the wall where a mark is measured from it") {
    wall::Project project = under_a_roof();
    project.datum = {wall::DatumHeight::level_line, wall::DatumSide::right, 2400};
    CHECK(only_finding(kRule, project).text ==
          "The marks of Kelp cannot be measured plumb from the level line at 2400 mm, which is not "
          "on the wall there; choose another height for it.");
    project.datum.level_line = 1400;
    CHECK(findings_of(kRule, project).empty());
}

TEST_CASE("On a flat wall every mark sees its corner") {
    wall::Project project = wall_of(4000, 2500);
    add_piece(project, "kelp", {2600, 1400}, {300, 400});
    for (const auto side : {wall::DatumSide::left, wall::DatumSide::right})
        for (const auto height : {wall::DatumHeight::floor, wall::DatumHeight::ceiling,
                                  wall::DatumHeight::level_line}) {
            project.datum = {height, side, 1500};
            CHECK(findings_of(kRule, project).empty());
        }
}

TEST_CASE("Marks are measured from the edges of what hangs, along the line of its top") {
    wall::Project project = under_a_roof();
    add_hung(project, "reef", {1000, 1000}, {300, 400});
    project.datum.height = wall::DatumHeight::piece;
    project.datum.piece = wall::PieceId{"reef"};
    CHECK(findings_of(kRule, project).empty());
    piece_named(project, "reef").state = wall::PieceState::planned;
    const wall::Finding found = findings_of(kRule, project).front();
    CHECK(found.severity == wall::Severity::mind);
    CHECK(found.text ==
          "Marks are measured from the edges of Reef, which does not hang yet; hang it first, or "
          "measure from the floor.");
}

TEST_CASE("The line along a piece's top must reach the marks") {
    wall::Project project = under_a_roof();
    add_hung(project, "reef", {3500, 1900}, {300, 400});
    piece_named(project, "kelp").at = geometry::Point<geometry::Wall>{300, 1000};
    project.datum.height = wall::DatumHeight::piece;
    project.datum.piece = wall::PieceId{"reef"};
    const std::vector<wall::Finding> found = findings_of(kRule, project);
    REQUIRE(found.size() == 2);
    CHECK(found[0].text ==
          "The marks of Kelp cannot be reached level along the top edge of Reef; measure from "
          "another piece or from a corner.");
    CHECK(found[1].text.find("level line at 2300 mm") != std::string::npos);
}
