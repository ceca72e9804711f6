#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;

namespace {

constexpr const char* kRule = "tape-reach";

}  // namespace

TEST_CASE("Marks beyond a tape's length are measured from the nearer corner") {
    wall::Project project = wall_of(9000, 2500);
    add_piece(project, "kelp", {7000, 1400}, {300, 400});
    const wall::Finding found = only_finding(kRule, project);
    CHECK(found.severity == wall::Severity::note);
    CHECK(found.measured == Approx(7300));
    CHECK(found.text ==
          "Kelp lies up to 7300 mm from the left corner, farther than a tape of 5000 mm reaches; "
          "measure from the other corner.");
    project.datum.side = wall::DatumSide::right;
    CHECK(findings_of(kRule, project).empty());
}

TEST_CASE("In the middle of a very long wall only a longer tape helps") {
    wall::Project project = wall_of(12000, 2500);
    add_piece(project, "kelp", {5900, 1400}, {200, 400});
    CHECK(only_finding(kRule, project).text ==
          "Kelp lies up to 6100 mm from the left corner, farther than a tape of 5000 mm reaches; "
          "use a longer one, or a plumb line on the way measured twice.");
}
