#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

/// A wall 3600 mm wide with one piece, 300 by 400 mm, at `left`.
wall::Project wall_with_kelp_at(double left) {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {left, 1300}, {300, 400});
    return project;
}

}  // namespace

TEST_CASE("A piece that reaches outside the wall is a stop with the way back in") {
    const wall::Finding finding = only_finding("inside-wall", wall_with_kelp_at(3350));
    CHECK(finding.severity == Severity::stop);
    CHECK(finding.pieces == std::vector<wall::PieceId>{{"kelp"}});
    CHECK(finding.measured == 50);
    CHECK(finding.wanted == 0);
    CHECK(finding.unit == "mm");
    CHECK(finding.place == geometry::Rect<geometry::Wall>{{3350, 1300}, {3650, 1700}});
    CHECK(finding.text ==
          "Kelp reaches 50 mm outside the wall; move it 50 mm to the left to bring it in.");
}

TEST_CASE("A piece that touches the edge of the wall is inside") {
    CHECK(findings_of("inside-wall", wall_with_kelp_at(3300)).empty());
    CHECK(findings_of("inside-wall", wall_with_kelp_at(3300.04)).empty());
    CHECK(findings_of("inside-wall", wall_with_kelp_at(3300.1)).size() == 1);
    CHECK(findings_of("inside-wall", wall_with_kelp_at(0)).empty());
    CHECK(findings_of("inside-wall", wall_with_kelp_at(-0.1)).size() == 1);
}

TEST_CASE("Under a sloping ceiling the corner of a piece counts") {
    // The ceiling rises 1 in 3 from 1200 mm, so it is at 1400 mm above x = 600.
    wall::Project project = attic_of(3600, 1200, 2400);
    add_piece(project, "kelp", {600, 1000}, {300, 400});
    CHECK(findings_of("inside-wall", project).empty());

    project.pieces.front().at = geometry::Point<geometry::Wall>{570, 1000};
    const wall::Finding finding = only_finding("inside-wall", project);
    // 10 mm too high for the corner, measured square to the slope: 10 cos(atan(1/3)).
    CHECK(*finding.measured == Approx(9.4868).margin(0.001));
    CHECK(finding.text ==
          "Kelp reaches 9.5 mm outside the wall; move it 10 mm down to bring it in.");
}

TEST_CASE("A piece larger than the wall is told to go elsewhere") {
    wall::Project project = wall_of(1000, 2400);
    add_piece(project, "kelp", {-100, 1300}, {1200, 400});
    CHECK(only_finding("inside-wall", project).text ==
          "Kelp reaches 100 mm outside the wall; it needs another place.");
}

TEST_CASE("A hook whose plate reaches past the ceiling is a stop though its piece is inside") {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 2000}, {300, 400});
    make_light(project, "kelp", 1);
    hang_on_a_nail(project, "kelp");
    // The teeth are 5 mm below the top and the plate of the small hook 25 mm high.
    piece_named(project, "kelp").hanger.drop = 5;
    const wall::Finding finding = only_finding("inside-wall", project);
    CHECK(finding.severity == Severity::stop);
    CHECK(finding.text ==
          "Kelp is inside the wall, but its hook reaches 20 mm outside; move it 20 mm down to "
          "bring it in.");

    piece_named(project, "kelp").hanger.drop = 25;
    CHECK(findings_of("inside-wall", project).empty());
}

TEST_CASE("A rail that is above the ceiling is not mended by moving the piece down") {
    wall::Project project = wall_of(3600, 2400);
    project.room.rail = 2500;
    wall::Piece& kelp = add_piece(project, "kelp", {1000, 1300}, {300, 400});
    kelp.hanger.type = wall::HangerType::two_rings;
    kelp.fixing = wall::FixingTypeId{"rail"};
    wall::FixingType rail;
    rail.id = {"rail"};
    rail.kind = wall::FixingKind::rail_hook;
    rail.rated = units::Kilograms{10};
    rail.footprint = {20, 40};
    project.own.fixings.push_back(rail);
    const std::string text = only_finding("inside-wall", project).text;
    CHECK_THAT(text, Catch::EndsWith("look at its height, move the piece aside, or hang it without "
                                     "the rail."));
}
