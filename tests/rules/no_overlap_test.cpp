#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

/// Two pieces 300 by 400 mm, the second with its left edge at `left`; the first ends at 1300.
wall::Project kelp_and_dune_at(double left) {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_piece(project, "dune", {left, 1300}, {300, 400});
    return project;
}

}  // namespace

TEST_CASE("Two pieces that overlap are a stop that says how much") {
    const wall::Finding finding = only_finding("no-overlap", kelp_and_dune_at(1260));
    CHECK(finding.severity == Severity::stop);
    CHECK(finding.pieces == std::vector<wall::PieceId>{{"kelp"}, {"dune"}});
    CHECK(finding.measured == 40);
    CHECK(finding.wanted == 0);
    CHECK(finding.text ==
          "Kelp and Dune overlap by 40 mm; move Dune 100 mm to the right to leave a gap of 60 mm.");
}

TEST_CASE("Pieces that touch do not overlap") {
    CHECK(findings_of("no-overlap", kelp_and_dune_at(1300)).empty());
    CHECK(findings_of("no-overlap", kelp_and_dune_at(1299.96)).empty());
    CHECK(findings_of("no-overlap", kelp_and_dune_at(1299.9)).size() == 1);
}

TEST_CASE("The piece that hangs already stays and the other moves") {
    wall::Project project = kelp_and_dune_at(1260);
    piece_named(project, "dune").state = wall::PieceState::hung;
    CHECK(only_finding("no-overlap", project).text ==
          "Kelp and Dune overlap by 40 mm; move Kelp 100 mm to the left to leave a gap of 60 mm.");
}

TEST_CASE("Two pieces that may not move are to be measured again") {
    wall::Project project = kelp_and_dune_at(1260);
    piece_named(project, "kelp").state = wall::PieceState::hung;
    piece_named(project, "dune").pinned = true;
    CHECK(only_finding("no-overlap", project).text ==
          "Kelp and Dune overlap by 40 mm; neither may be moved, so measure again where they hang "
          "or free one of them.");
}

TEST_CASE("Three pieces on one spot make three pairs") {
    wall::Project project = kelp_and_dune_at(1000);
    add_piece(project, "tide", {1000, 1300}, {300, 400});
    CHECK(findings_of("no-overlap", project).size() == 3);
}

TEST_CASE("An overlap too small for the person's unit still reads as one") {
    wall::Project project = kelp_and_dune_at(1299.5);
    project.unit = units::LengthUnit::inch;
    CHECK(only_finding("no-overlap", project).text ==
          "Kelp and Dune overlap by less than 1/16 in; move Dune 2 3/8 in to the right to leave a "
          "gap of 2 3/8 in.");
}
