#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

using Rect = geometry::Rect<geometry::Wall>;

constexpr const char* kRule = "clear-of-furniture-and-fixtures";

/// A sofa 800 mm high, and a piece whose lower edge is at `bottom`.
wall::Project sofa_and_kelp_at(double bottom) {
    wall::Project project = wall_of(3600, 2400);
    add_furniture(project, wall::FurnitureType::sofa, {{700, 0}, {2600, 800}});
    add_piece(project, "kelp", {1000, bottom}, {300, 400});
    return project;
}

}  // namespace

TEST_CASE("A piece behind the sofa is a stop with the way out") {
    const wall::Finding finding = only_finding(kRule, sofa_and_kelp_at(760));
    CHECK(finding.severity == Severity::stop);
    CHECK(finding.measured == 40);
    CHECK(finding.text == "Kelp is behind the sofa by 40 mm; move it 40 mm up to clear it.");
}

TEST_CASE("A piece that stands on the edge of the sofa is clear of it") {
    CHECK(findings_of(kRule, sofa_and_kelp_at(800)).empty());
    CHECK(findings_of(kRule, sofa_and_kelp_at(799.9)).size() == 1);
}

TEST_CASE("What hides a piece decides how bad it is") {
    const auto severity_behind = [](wall::FurnitureType type) {
        wall::Project project = sofa_and_kelp_at(760);
        project.room.furniture.front().type = type;
        return only_finding(kRule, project).severity;
    };
    CHECK(severity_behind(wall::FurnitureType::bookcase) == Severity::stop);
    CHECK(severity_behind(wall::FurnitureType::sideboard) == Severity::stop);
    CHECK(severity_behind(wall::FurnitureType::bed) == Severity::stop);
    CHECK(severity_behind(wall::FurnitureType::lamp) == Severity::mind);
    CHECK(severity_behind(wall::FurnitureType::plant) == Severity::mind);
}

TEST_CASE("A piece over any fixture is a stop") {
    const wall::FixtureType type =
        GENERATE(wall::FixtureType::door, wall::FixtureType::window, wall::FixtureType::radiator,
                 wall::FixtureType::socket, wall::FixtureType::light_switch);
    wall::Project project = wall_of(3600, 2400);
    add_fixture(project, type, {{1280, 1300}, {1400, 1400}});
    add_piece(project, "kelp", {1000, 1200}, {300, 400});
    const wall::Finding finding = only_finding(kRule, project);
    CHECK(finding.severity == Severity::stop);
    CHECK(finding.text ==
          fmt::format("Kelp covers the {} by 20 mm; move it 20 mm to the left to clear it.",
                      wall::name_of(type)));
}

TEST_CASE("The advice does not lead out of the wall") {
    wall::Project project = wall_of(3600, 2400);
    add_fixture(project, wall::FixtureType::window, {{200, 1000}, {1400, 2000}});
    add_piece(project, "kelp", {50, 1200}, {300, 400});
    // 150 mm to the left would be out of the wall, so the next shortest way is named.
    const wall::Finding finding = only_finding(kRule, project);
    CHECK(finding.measured == 150);
    CHECK(finding.text == "Kelp covers the window by 150 mm; move it 600 mm down to clear it.");
}

TEST_CASE("Furniture with a title is called by it") {
    wall::Project project = sofa_and_kelp_at(760);
    project.room.furniture.front().title = "Aunt Ada's sideboard";
    CHECK(only_finding(kRule, project).text ==
          "Kelp is behind Aunt Ada's sideboard by 40 mm; move it 40 mm up to clear it.");
}
