#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;

namespace {

wall::Project kelp_of(wall::PixelSize pixels) {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    project.prints.push_back({{"kelp"}, "Kelp", {254, 381}, 250, {}, "", pixels, {}});
    piece_named(project, "kelp").print = wall::PrintId{"kelp"};
    return project;
}

}  // namespace

TEST_CASE("A photograph with too few pixels for its size is told to look soft") {
    // 10 x 15 in, seen from 1.5 diagonals, 27 in: 3438 / 27 = 127 pixels per inch are resolved.
    const wall::Finding finding = only_finding("print-sharp", kelp_of({1000, 1500}));
    CHECK(finding.severity == wall::Severity::note);
    CHECK(*finding.measured == Approx(100));
    CHECK(*finding.wanted == Approx(127).margin(1));
    CHECK(finding.unit == "px/in");
    CHECK(finding.text.find("soft") != std::string::npos);
}

TEST_CASE("A photograph with pixels enough, or of which nobody knows, is not spoken of") {
    CHECK(findings_of("print-sharp", kelp_of({1300, 1950})).empty());
    wall::Project project = kelp_of({100, 150});
    project.prints.front().pixels.reset();
    CHECK(findings_of("print-sharp", project).empty());
}

TEST_CASE("Each print of a mount with several windows is looked at for sharpness") {
    wall::Project project = kelp_of({100, 150});
    project.prints.push_back(
        {{"dune"}, "Dune", {100, 150}, 250, {}, "", wall::PixelSize{50, 75}, {}});
    wall::Mount mount;
    mount.id = {"white"};
    mount.openings = {{wall::PrintId{"kelp"}, {}}, {wall::PrintId{"dune"}, {}}};
    project.mounts.push_back(mount);
    piece_named(project, "kelp").mount = mount.id;
    CHECK(findings_of("print-sharp", project).size() == 2);
}
