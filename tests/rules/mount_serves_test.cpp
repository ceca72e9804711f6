#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <functional>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

constexpr const char* kRule = "mount-serves";

/// A frame 300 by 400 mm shows 260 by 360 mm and takes a blank of 270 by 370 mm: moulding 20 mm,
/// lip 6 mm, clearance 2 mm. `change` is made to a white mount.
wall::Project kelp_behind(geometry::Size print, const std::function<void(wall::Mount&)>& change) {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    project.prints.push_back({{"kelp"}, "Kelp", print, 250, {}, "", {}, {}});
    piece_named(project, "kelp").print = wall::PrintId{"kelp"};
    wall::Mount mount;
    mount.id = {"white"};
    change(mount);
    project.mounts.push_back(mount);
    piece_named(project, "kelp").mount = mount.id;
    return project;
}

void as_usual(wall::Mount& /*mount*/) {}

}  // namespace

TEST_CASE("A mount that serves is not spoken of") {
    CHECK(findings_of(kRule, kelp_behind({180, 270}, as_usual)).empty());
}

TEST_CASE("A border that the lip leaves too thin is a thing to mind, with the frame that serves") {
    // Blank 270, print 240, the most overlap 10: (270 - 220) / 2 = 25 cut, less 5 of lip.
    const wall::Finding finding = only_finding(kRule, kelp_behind({240, 270}, as_usual));
    CHECK(finding.severity == Severity::mind);
    CHECK(*finding.measured == Approx(20));
    CHECK(*finding.wanted == Approx(25));
    CHECK(finding.pieces == std::vector{wall::PieceId{"kelp"}});
    CHECK(finding.text.starts_with("Kelp: This frame leaves 20 mm of the border seen"));
}

TEST_CASE("What is cut and hangs is spoken of only where it cannot be so or harms the print") {
    wall::Project thin = kelp_behind({240, 270}, as_usual);
    piece_named(thin, "kelp").state = wall::PieceState::hung;
    CHECK(findings_of(kRule, thin).empty());
    wall::Project floating =
        kelp_behind({180, 270}, [](wall::Mount& mount) { mount.floats = true; });
    piece_named(floating, "kelp").state = wall::PieceState::hung;
    CHECK(only_finding(kRule, floating).text.find("glazing") != std::string::npos);
}

TEST_CASE("A print larger than its frame takes is told once") {
    const wall::Project project = kelp_behind({280, 370}, as_usual);
    CHECK(findings_of("print-fits-frame", project).size() == 1);
    CHECK(std::ranges::none_of(findings_of(kRule, project), [](const wall::Finding& finding) {
        return finding.text.find("reaches") != std::string::npos;
    }));
}

TEST_CASE("A stack too deep for the rebate is told once, by its own rule") {
    const wall::Project project = kelp_behind({180, 270}, [](wall::Mount& mount) {
        mount.under.push_back({4, {wall::MaterialId{"mount_board"}, 10}});
    });
    CHECK(findings_of("depth-fits-rebate", project).size() == 1);
    CHECK(std::ranges::none_of(findings_of(kRule, project), [](const wall::Finding& finding) {
        return finding.text.find("deep together") != std::string::npos;
    }));
}

TEST_CASE("Each of several windows is looked at") {
    wall::Project project = kelp_behind({100, 150}, as_usual);
    project.prints.push_back({{"dune"}, "Dune", {100, 150}, 250, {}, "", {}, {}});
    wall::Mount& mount = project.mounts.front();
    mount.openings = {{wall::PrintId{"kelp"}, {}}, {wall::PrintId{"dune"}, {}}};
    mount.border_least = 10;
    mount.overlap = 4;
    REQUIRE(findings_of(kRule, project).empty());
    mount.bar = 9;
    CHECK(only_finding(kRule, project).text.find("between the windows for Kelp and Dune") !=
          std::string::npos);
}
