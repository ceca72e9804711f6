#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

constexpr const char* kRule = "clearance-above-furniture";

/// A sofa 800 mm high and 1900 mm wide, and a piece this far above it.
wall::Project kelp_above_sofa(double clearance) {
    wall::Project project = wall_of(4600, 2600);
    add_furniture(project, wall::FurnitureType::sofa, {{700, 0}, {2600, 800}});
    add_piece(project, "kelp", {1000, 800 + clearance}, {1300, 400});
    return project;
}

}  // namespace

TEST_CASE("A piece too close above the sofa is to be raised") {
    const wall::Finding finding = only_finding(kRule, kelp_above_sofa(100));
    CHECK(finding.severity == Severity::mind);
    CHECK(finding.measured == 100);
    CHECK(finding.wanted == 150);
    CHECK(finding.text ==
          "Kelp hangs 100 mm above the sofa, under the usual 150 to 255 mm; raise it by 50 mm.");
}

TEST_CASE("A piece too far above the sofa is to be lowered") {
    const wall::Finding finding = only_finding(kRule, kelp_above_sofa(400));
    CHECK(finding.wanted == 255);
    CHECK(finding.text ==
          "Kelp hangs 400 mm above the sofa, over the usual 150 to 255 mm; lower it by 145 mm.");
}

TEST_CASE("Both ends of the clearance are fine") {
    CHECK(findings_of(kRule, kelp_above_sofa(150)).empty());
    CHECK(findings_of(kRule, kelp_above_sofa(255)).empty());
    CHECK(findings_of(kRule, kelp_above_sofa(149.9)).size() == 1);
    CHECK(findings_of(kRule, kelp_above_sofa(255.1)).size() == 1);
}

TEST_CASE("Only furniture that carries a group asks for a clearance") {
    const auto findings_above = [](wall::FurnitureType type) {
        wall::Project project = kelp_above_sofa(100);
        project.room.furniture.front().type = type;
        return findings_of(kRule, project).size();
    };
    CHECK(findings_above(wall::FurnitureType::sideboard) == 1);
    CHECK(findings_above(wall::FurnitureType::table) == 1);
    CHECK(findings_above(wall::FurnitureType::bookcase) == 1);
    CHECK(findings_above(wall::FurnitureType::bed) == 1);
    CHECK(findings_above(wall::FurnitureType::lamp) == 0);
    CHECK(findings_above(wall::FurnitureType::plant) == 0);
}

TEST_CASE("A piece beside the sofa keeps no clearance to it") {
    wall::Project project = kelp_above_sofa(400);
    piece_named(project, "kelp").at = geometry::Point<geometry::Wall>{2700, 1200};
    CHECK(findings_of(kRule, project).empty());
}

TEST_CASE("A group that only reaches over the end of the sofa does not hang above it") {
    wall::Project project = kelp_above_sofa(400);
    piece_named(project, "kelp").at = geometry::Point<geometry::Wall>{1960, 1200};
    CHECK(findings_of(kRule, project).empty());
    piece_named(project, "kelp").at = geometry::Point<geometry::Wall>{1940, 1200};
    CHECK(findings_of(kRule, project).size() == 1);
}

TEST_CASE("The lowest piece of the group that is right above the sofa counts") {
    wall::Project project = kelp_above_sofa(200);
    add_piece(project, "dune", {2360, 900}, {300, 400});
    CHECK(only_finding(kRule, project).text ==
          "Dune hangs 100 mm above the sofa, under the usual 150 to 255 mm; raise its group by 50 "
          "mm.");
    // Past the end of the sofa it may hang as low as it likes.
    piece_named(project, "dune").at = geometry::Point<geometry::Wall>{2610, 900};
    CHECK(findings_of(kRule, project).empty());
}

TEST_CASE("A second group above the first is not too far above the sofa") {
    wall::Project project = kelp_above_sofa(200);
    add_piece(project, "dune", {1000, 1600}, {1300, 400});
    CHECK(findings_of(kRule, project).empty());
}

TEST_CASE("A low table beside the sofa does not ask the group to come down") {
    wall::Project project = kelp_above_sofa(200);
    add_furniture(project, wall::FurnitureType::table, {{2000, 0}, {2600, 450}});
    CHECK(findings_of(kRule, project).empty());
}

TEST_CASE("The same sofa in inches is said in inches") {
    wall::Project project = kelp_above_sofa(4 * units::kMmPerInch);
    project.unit = units::LengthUnit::inch;
    CHECK(only_finding(kRule, project).text ==
          "Kelp hangs 4 in above the sofa, under the usual 5 7/8 to 10 1/16 in; raise it by 1 7/8 "
          "in.");
}
