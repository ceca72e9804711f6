#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

constexpr const char* kRule = "print-fits-frame";

/// A frame 300 by 400 mm shows 260 by 360 mm and takes 270 by 370 mm: moulding 20 mm, lip 6 mm,
/// clearance 2 mm.
wall::Project kelp_with_print(geometry::Size print) {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    project.prints.push_back({{"kelp"}, "Kelp", print, 250, {}, "", {}, {}});
    piece_named(project, "kelp").print = wall::PrintId{"kelp"};
    return project;
}

wall::Project with_mount(wall::Project project, double overlap) {
    wall::Mount mount;
    mount.id = {"white"};
    mount.overlap = overlap;
    project.mounts.push_back(mount);
    piece_named(project, "kelp").mount = mount.id;
    return project;
}

}  // namespace

TEST_CASE("A print larger than its frame takes is a stop") {
    const wall::Finding finding = only_finding(kRule, kelp_with_print({280, 370}));
    CHECK(finding.severity == Severity::stop);
    CHECK(finding.measured == 280);
    CHECK(finding.wanted == 270);
    CHECK(finding.text ==
          "The print of Kelp is 280 x 370 mm, and its frame takes 270 x 370 mm; choose a larger "
          "frame.");
}

TEST_CASE("A print as large as the rebate less its clearance fits") {
    CHECK(findings_of(kRule, kelp_with_print({270, 370})).empty());
    CHECK(findings_of(kRule, kelp_with_print({270.1, 370})).size() == 1);
    CHECK(findings_of(kRule, kelp_with_print({270, 370.1})).size() == 1);
}

TEST_CASE("A print that would fit the other way is told to turn its frame") {
    wall::Project project = kelp_with_print({370, 270});
    CHECK(only_finding(kRule, project).text ==
          "The print of Kelp is 370 x 270 mm, and its frame takes 270 x 370 mm; turn the frame a "
          "quarter.");
    piece_named(project, "kelp").turned = true;
    CHECK(findings_of(kRule, project).empty());
}

TEST_CASE("A print that leaves the frame bare is a thing to mind") {
    const wall::Finding finding = only_finding(kRule, kelp_with_print({250, 360}));
    CHECK(finding.severity == Severity::mind);
    CHECK(finding.measured == 5);
    CHECK(finding.text ==
          "The print of Kelp leaves 5 mm bare on two sides of its frame, which shows 260 x 360 mm; "
          "give it a mount or a "
          "smaller frame.");
    CHECK(findings_of(kRule, kelp_with_print({260, 360})).empty());
    CHECK(findings_of(kRule, with_mount(kelp_with_print({250, 360}), 5)).empty());
}

TEST_CASE("A print too large for its mount's card is a stop with a mount too") {
    CHECK(only_finding(kRule, with_mount(kelp_with_print({280, 370}), 10)).severity ==
          Severity::stop);
}

TEST_CASE("A frame without a print has nothing to fit") {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    CHECK(findings_of(kRule, project).empty());
}
