#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

wall::Project sofa_and_kelp(double kg) {
    wall::Project project = wall_of(3600, 2400);
    add_furniture(project, wall::FurnitureType::sofa, {{700, 0}, {2600, 800}});
    add_piece(project, "kelp", {1000, 1000}, {1200, 800});
    piece_named(project, "kelp").hanger.type = wall::HangerType::two_rings;
    piece_named(project, "kelp").weighed = units::Kilograms{kg};
    return project;
}

}  // namespace

TEST_CASE("Heavy glass over a sofa is worth a note") {
    const wall::Finding finding = only_finding("over-seat", sofa_and_kelp(10));
    CHECK(finding.severity == Severity::note);
    CHECK(*finding.measured == Approx(10.2));
    CHECK(finding.text ==
          "Kelp has glass and weighs up to 10.20 kg where people sit below it on the sofa; acrylic "
          "is lighter and safer.");
}

TEST_CASE("Over a sofa glass is heavy from 20 lb on") {
    // Earthquake Country Alliance, "Secure your hanging objects": up to 20 lb (9.07 kg) a hook and
    // putty will do.
    CHECK(findings_of("over-seat", sofa_and_kelp(8.89)).empty());
    CHECK(findings_of("over-seat", sofa_and_kelp(8.90)).size() == 1);
}

TEST_CASE("Heavy acrylic over a sofa needs no note") {
    wall::Project project = sofa_and_kelp(10);
    frame_named(project, "kelp").glazing.material = {"acrylic"};
    CHECK(findings_of("over-seat", project).empty());
}

TEST_CASE("Nobody sits on a sideboard") {
    wall::Project project = sofa_and_kelp(10);
    project.room.furniture.front().type = wall::FurnitureType::sideboard;
    CHECK(findings_of("over-seat", project).empty());
}
