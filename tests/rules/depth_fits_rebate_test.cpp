#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

/// Acrylic 1/8 in, a mount 1/16 in and foam board 3/16 in thick in a rebate this deep.
wall::Project kelp_with_rebate(double depth) {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    wall::Frame& frame = frame_named(project, "kelp");
    frame.glazing = {{"acrylic"}, units::kMmPerInch / 8};
    frame.backing.thickness = 3 * units::kMmPerInch / 16;
    frame.rebate_depth = depth;
    wall::Mount mount;
    mount.id = {"white"};
    mount.card.thickness = units::kMmPerInch / 16;
    project.mounts.push_back(mount);
    piece_named(project, "kelp").mount = mount.id;
    return project;
}

}  // namespace

TEST_CASE("Layers of 3/8 in fit a rebate of 3/8 in") {
    // Westfall Framing, printed Framing Guide: acrylic 1/8 + mount 1/16 + foam backing 3/16 = 3/8
    // in of rebate depth.
    CHECK(findings_of("depth-fits-rebate", kelp_with_rebate(3 * units::kMmPerInch / 8)).empty());
    CHECK(findings_of("depth-fits-rebate", kelp_with_rebate(3 * units::kMmPerInch / 8 - 0.1))
              .size() == 1);
}

TEST_CASE("Layers deeper than the rebate are a thing to mind") {
    const wall::Finding finding = only_finding("depth-fits-rebate", kelp_with_rebate(8));
    CHECK(finding.severity == Severity::mind);
    CHECK(*finding.measured == Approx(9.525));
    CHECK(finding.wanted == 8);
    CHECK(finding.text ==
          "The glazing, mount, print and backing of Kelp are 9.5 mm deep, over the 8 mm of the "
          "rebate; choose thinner layers or a deeper frame.");
}

TEST_CASE("Every layer of the mount counts in the depth") {
    wall::Project project = kelp_with_rebate(10);
    REQUIRE(findings_of("depth-fits-rebate", project).empty());
    project.mounts.front().under.push_back({4, {wall::MaterialId{"mount_board"}, 1.4}});
    const wall::Finding finding = only_finding("depth-fits-rebate", project);
    CHECK(*finding.measured == Approx(9.525 + 1.4));
}

TEST_CASE("The paper of the print counts in the depth, behind a mount and without one") {
    for (const bool mounted : {true, false}) {
        wall::Project project = kelp_with_rebate(mounted ? 9.6 : 9.6 - units::kMmPerInch / 16);
        if (!mounted)
            piece_named(project, "kelp").mount.reset();
        REQUIRE(findings_of("depth-fits-rebate", project).empty());
        // 300 g/m2 at 0.8 g/cm3 are 0.375 mm.
        project.prints.push_back({{"kelp"}, "Kelp", {200, 300}, 300, {}, "", {}, {}});
        piece_named(project, "kelp").print = wall::PrintId{"kelp"};
        const wall::Finding finding = only_finding("depth-fits-rebate", project);
        CHECK(*finding.measured == Approx(9.525 + 0.375 - (mounted ? 0 : units::kMmPerInch / 16)));
    }
}
