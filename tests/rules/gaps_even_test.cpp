#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

/// A row of three pieces 300 mm wide with these gaps between them.
wall::Project row_with_gaps(double first, double second) {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {500, 1300}, {300, 400});
    add_piece(project, "dune", {800 + first, 1300}, {300, 400});
    add_piece(project, "tide", {1100 + first + second, 1300}, {300, 400});
    return project;
}

}  // namespace

TEST_CASE("Uneven gaps in a group are named with the least and the most") {
    const wall::Finding finding = only_finding("gaps-even", row_with_gaps(48, 75));
    CHECK(finding.severity == Severity::mind);
    CHECK(finding.pieces == std::vector<wall::PieceId>{{"kelp"}, {"dune"}, {"tide"}});
    CHECK(finding.measured == 27);
    CHECK(finding.wanted == 2);
    CHECK(finding.place == geometry::Rect<geometry::Wall>{{500, 1300}, {1523, 1700}});
    CHECK(finding.text ==
          "The gaps in the group of Kelp, Dune and Tide run from 48 mm (Kelp to Dune) to 75 mm "
          "(Dune to Tide), a spread "
          "of 27 mm, over the 2 mm allowed; even them out.");
}

TEST_CASE("Gaps within the tolerance are even") {
    CHECK(findings_of("gaps-even", row_with_gaps(60, 60)).empty());
    CHECK(findings_of("gaps-even", row_with_gaps(60, 62)).empty());
    CHECK(findings_of("gaps-even", row_with_gaps(60, 62.1)).size() == 1);
}

TEST_CASE("The tolerance is the person's") {
    wall::Project project = row_with_gaps(48, 75);
    project.style.gap_tolerance = 27;
    CHECK(findings_of("gaps-even", project).empty());
}

TEST_CASE("Gaps of two groups are not compared") {
    wall::Project project = row_with_gaps(60, 60);
    add_piece(project, "reef", {2500, 1300}, {300, 400});
    add_piece(project, "foam", {2870, 1300}, {300, 400});
    CHECK(findings_of("gaps-even", project).empty());
}
