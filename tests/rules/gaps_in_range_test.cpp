#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

wall::Project pair_with_gap(double gap) {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {500, 1300}, {300, 400});
    add_piece(project, "dune", {800 + gap, 1300}, {300, 400});
    return project;
}

}  // namespace

TEST_CASE("A gap under the least is named with what is missing") {
    const wall::Finding finding = only_finding("gaps-in-range", pair_with_gap(30));
    CHECK(finding.severity == Severity::mind);
    CHECK(finding.measured == 30);
    CHECK(finding.wanted == 40);
    CHECK(finding.place == geometry::Rect<geometry::Wall>{{800, 1300}, {830, 1700}});
    CHECK(finding.text ==
          "Kelp and Dune hang 30 mm apart, under the 40 mm that keeps frames from seeming to "
          "touch; widen the gap by 10 mm.");
}

TEST_CASE("A gap over the most is named with what is too much") {
    const wall::Finding finding = only_finding("gaps-in-range", pair_with_gap(90));
    CHECK(finding.severity == Severity::mind);
    CHECK(finding.measured == 90);
    CHECK(finding.wanted == 75);
    CHECK(finding.text ==
          "Kelp and Dune hang 90 mm apart, over the 75 mm that holds a group together; close the "
          "gap by 15 mm.");
}

TEST_CASE("The bounds themselves are within the range") {
    CHECK(findings_of("gaps-in-range", pair_with_gap(40)).empty());
    CHECK(findings_of("gaps-in-range", pair_with_gap(75)).empty());
    CHECK(findings_of("gaps-in-range", pair_with_gap(39.9)).size() == 1);
    CHECK(findings_of("gaps-in-range", pair_with_gap(75.1)).size() == 1);
}

TEST_CASE("Only the worst gap of a group is named and the others are counted") {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {500, 1300}, {300, 400});
    add_piece(project, "dune", {830, 1300}, {300, 400});
    add_piece(project, "tide", {1150, 1300}, {300, 400});
    add_piece(project, "reef", {1485, 1300}, {300, 400});
    CHECK(only_finding("gaps-in-range", project).text ==
          "Dune and Tide hang 20 mm apart, under the 40 mm that keeps frames from seeming to "
          "touch; widen the gap by 20 mm "
          "(2 more of its group need the same).");
}

TEST_CASE("A group may be too tight in one place and too loose in another") {
    wall::Project project = pair_with_gap(30);
    add_piece(project, "tide", {1220, 1300}, {300, 400});
    const std::vector<wall::Finding> findings = findings_of("gaps-in-range", project);
    REQUIRE(findings.size() == 2);
    CHECK(findings[0].measured == 30);
    CHECK(findings[1].measured == 90);
}

TEST_CASE("Pieces farther apart than a group reaches have no gap to judge") {
    CHECK(findings_of("gaps-in-range", pair_with_gap(120)).size() == 1);
    CHECK(findings_of("gaps-in-range", pair_with_gap(121)).empty());
}
