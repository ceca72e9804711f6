#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

wall::Project kelp_of_size(geometry::Size outside) {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {500, 500}, outside);
    return project;
}

}  // namespace

TEST_CASE("A long frame with thin glass is a thing to mind") {
    const wall::Finding finding = only_finding("glass-large", kelp_of_size({1200, 500}));
    CHECK(finding.severity == Severity::mind);
    CHECK(finding.measured == 2);
    CHECK(finding.wanted == 3);
    CHECK(finding.text ==
          "Kelp is 1200 mm long and has glass 2 mm thick; over 1000 mm, fit glass of 3 mm or "
          "acrylic.");
}

TEST_CASE("Glass of 2 mm is for frames up to 1 m") {
    // A framer's page, "Glazing": 2 mm, and 3 mm if the frame is wider than 1 m.
    CHECK(findings_of("glass-large", kelp_of_size({1000, 500})).empty());
    CHECK(findings_of("glass-large", kelp_of_size({1000.1, 500})).size() == 1);
    CHECK(findings_of("glass-large", kelp_of_size({500, 1000.1})).size() == 1);
    wall::Project thick = kelp_of_size({1200, 500});
    frame_named(thick, "kelp").glazing.thickness = 3;
    CHECK(findings_of("glass-large", thick).empty());
}

TEST_CASE("Thin acrylic may be large, and so may a frame without glazing") {
    wall::Project project = kelp_of_size({1200, 500});
    frame_named(project, "kelp").glazing.material = {"acrylic"};
    CHECK(findings_of("glass-large", project).empty());
    frame_named(project, "kelp").glazing = {{"glass"}, 0};
    CHECK(findings_of("glass-large", project).empty());
}

TEST_CASE("A glazing that nobody knows counts as glass") {
    wall::Project project = kelp_of_size({1200, 500});
    frame_named(project, "kelp").glazing.material = {"mystery"};
    CHECK(findings_of("glass-large", project).size() == 1);
    // Once the person has said how dense it is, it counts as the plastic that it is.
    project.own.materials.push_back(
        {{"mystery"}, "Sheet from the shed", 1180, 1200, "weighed", {}});
    CHECK(findings_of("glass-large", project).empty());
}
