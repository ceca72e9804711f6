#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

/// A cot 900 mm high, and a piece above it that weighs 1.2 kg on the scale and has glass.
wall::Project cot_and_kelp() {
    wall::Project project = wall_of(3600, 2400);
    add_furniture(project, wall::FurnitureType::cot, {{1000, 0}, {2200, 900}});
    add_piece(project, "kelp", {1200, 1300}, {300, 400});
    piece_named(project, "kelp").weighed = units::Kilograms{1.2};
    return project;
}

}  // namespace

TEST_CASE("A heavy piece with glass over a cot is a stop") {
    const wall::Finding finding = only_finding("over-bed", cot_and_kelp());
    CHECK(finding.severity == Severity::stop);
    CHECK(*finding.measured == Approx(1.224));  // the high side of a kitchen scale
    CHECK(finding.wanted == 0.5);
    CHECK(finding.unit == "kg");
    CHECK(finding.text ==
          "Kelp hangs over the cot and weighs up to 1.22 kg and has glass; hang only what has no "
          "glass and weighs 500 g or "
          "less there.");
}

TEST_CASE("Light glass over a bed is a stop too") {
    wall::Project project = cot_and_kelp();
    project.room.furniture.front().type = wall::FurnitureType::bed;
    piece_named(project, "kelp").weighed = units::Kilograms{0.3};
    const wall::Finding finding = only_finding("over-bed", project);
    CHECK(finding.severity == Severity::stop);
    CHECK_FALSE(finding.measured.has_value());
    CHECK(finding.text ==
          "Kelp hangs over the bed and has glass; hang only what has no glass and weighs 500 g or "
          "less there.");
}

TEST_CASE("Over a bed a piece without glass may weigh as much as the style says") {
    wall::Project project = cot_and_kelp();
    make_light(project, "kelp", 0.489);
    CHECK(findings_of("over-bed", project).empty());
    make_light(project, "kelp", 0.491);
    CHECK(only_finding("over-bed", project).text ==
          "Kelp hangs over the cot and weighs up to 501 g; hang only what has no glass and weighs "
          "500 g or less there.");
}

TEST_CASE("Beside the bed glass may hang") {
    wall::Project project = cot_and_kelp();
    piece_named(project, "kelp").at = geometry::Point<geometry::Wall>{2200, 1300};
    CHECK(findings_of("over-bed", project).empty());
    piece_named(project, "kelp").at = geometry::Point<geometry::Wall>{2199.9, 1300};
    CHECK(findings_of("over-bed", project).size() == 1);
}

TEST_CASE("What hangs over a bed already is a stop all the same") {
    wall::Project project = cot_and_kelp();
    piece_named(project, "kelp").state = wall::PieceState::hung;
    CHECK(only_finding("over-bed", project).severity == Severity::stop);
}
