#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

constexpr const char* kRule = "width-to-furniture";

/// A sofa 2000 mm wide and above it one piece of this width.
wall::Project kelp_of_width(double width) {
    wall::Project project = wall_of(4600, 2600);
    add_furniture(project, wall::FurnitureType::sofa, {{600, 0}, {2600, 800}});
    add_piece(project, "kelp", {700, 1000}, {width, 400});
    return project;
}

}  // namespace

TEST_CASE("A group too narrow for the sofa is told what would fit") {
    const wall::Finding finding = only_finding(kRule, kelp_of_width(800));
    CHECK(finding.severity == Severity::mind);
    CHECK(finding.measured == 0.4);
    CHECK(finding.wanted == 0.6);
    CHECK(finding.unit.empty());
    CHECK(finding.text ==
          "Above the sofa, Kelp takes 800 mm, 40 % of its width; 60 to 75 % is usual, here 1200 to "
          "1500 mm.");
}

TEST_CASE("A group too wide for the sofa is told what would fit") {
    const wall::Finding finding = only_finding(kRule, kelp_of_width(1700));
    CHECK(finding.measured == 0.85);
    CHECK(finding.wanted == 0.75);
}

TEST_CASE("A group of 60 to 75 % of the sofa fits") {
    CHECK(findings_of(kRule, kelp_of_width(1200)).empty());
    CHECK(findings_of(kRule, kelp_of_width(1500)).empty());
    CHECK(findings_of(kRule, kelp_of_width(1199.9)).size() == 1);
    CHECK(findings_of(kRule, kelp_of_width(1500.1)).size() == 1);
}

TEST_CASE("A 90 in sofa takes a group of 54 to 67 1/2 in") {
    // The worked example of a home article, "How to hang art above a couch" (common practice).
    wall::Project project = wall_of(4600, 2600);
    add_furniture(project, wall::FurnitureType::sofa,
                  {{600, 0}, {600 + 90 * units::kMmPerInch, 800}});
    add_piece(project, "kelp", {700, 1000}, {54 * units::kMmPerInch, 400});
    CHECK(findings_of(kRule, project).empty());
    frame_named(project, "kelp").outside.width = 67.5 * units::kMmPerInch;
    CHECK(findings_of(kRule, project).empty());
    frame_named(project, "kelp").outside.width = 68 * units::kMmPerInch;
    CHECK(findings_of(kRule, project).size() == 1);
}

TEST_CASE("A group is measured against the furniture it shares most width with") {
    wall::Project project = kelp_of_width(1300);
    add_furniture(project, wall::FurnitureType::table, {{1500, 0}, {2100, 450}});
    CHECK(findings_of(kRule, project).empty());
}
