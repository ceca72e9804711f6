#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

constexpr const char* kRule = "heat-and-steam";

/// A radiator that ends at 700 mm, and a piece above it with its lower edge at `bottom`.
wall::Project radiator_and_kelp_at(double bottom) {
    wall::Project project = wall_of(3600, 2400);
    add_fixture(project, wall::FixtureType::radiator, {{1000, 100}, {1800, 700}});
    add_piece(project, "kelp", {1100, bottom}, {300, 400});
    make_light(project, "kelp", 1);
    return project;
}

}  // namespace

TEST_CASE("Strips in the warm air of a radiator are a stop") {
    const wall::Finding finding = only_finding(kRule, radiator_and_kelp_at(950));
    CHECK(finding.severity == Severity::stop);
    CHECK(finding.measured == 250);
    CHECK(finding.wanted == 600);
    CHECK(finding.text ==
          "Kelp hangs 250 mm above the radiator, whose warm air reaches 600 mm up, and warm strips "
          "let go; raise it by 350 "
          "mm or hang it elsewhere.");
}

TEST_CASE("On a hook the warm air only matters to the picture") {
    wall::Project project = radiator_and_kelp_at(950);
    hang_on_a_nail(project, "kelp");
    const wall::Finding finding = only_finding(kRule, project);
    CHECK(finding.severity == Severity::mind);
    CHECK(finding.text ==
          "Kelp hangs 250 mm above the radiator, whose warm air reaches 600 mm up; raise it by 350 "
          "mm or hang it elsewhere.");
}

TEST_CASE("Above the warm air a piece is fine") {
    CHECK(findings_of(kRule, radiator_and_kelp_at(1300)).empty());
    CHECK(findings_of(kRule, radiator_and_kelp_at(1299.9)).size() == 1);
}

TEST_CASE("Beside the radiator a piece is fine") {
    wall::Project project = radiator_and_kelp_at(950);
    piece_named(project, "kelp").at = geometry::Point<geometry::Wall>{1800, 950};
    CHECK(findings_of(kRule, project).empty());
}

TEST_CASE("Strips in a bathroom are named together") {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_piece(project, "dune", {1360, 1300}, {300, 400});
    add_piece(project, "tide", {1720, 1300}, {300, 400});
    hang_on_a_nail(project, "dune");
    project.room.use = wall::RoomUse::bathroom;
    const wall::Finding finding = only_finding(kRule, project);
    CHECK(finding.severity == Severity::mind);
    CHECK(finding.pieces == std::vector<wall::PieceId>{{"kelp"}, {"tide"}});
    CHECK(finding.text ==
          "Steam in a bathroom makes strips let go; hang Kelp and Tide by hooks or screws.");
    project.room.use = wall::RoomUse::kitchen;
    CHECK(findings_of(kRule, project).size() == 1);
    project.room.use = wall::RoomUse::bedroom;
    CHECK(findings_of(kRule, project).empty());
}
