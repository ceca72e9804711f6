#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::HangerType;
using wall::Severity;

namespace {

constexpr geometry::Size kOutside{300, 400};

/// Kelp from two rings 200 mm apart, its cords 1050 and 1250 mm across on a rail at 2200 mm.
wall::Project kelp_on_the_rail() {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, kOutside);
    make_light(project, "kelp", 1);
    hang_from_the_rail(project, "kelp", {HangerType::two_rings, 100, 200, {}, {}, {}});
    return project;
}

void add_on_rail(wall::Project& project, const std::string& id,
                 geometry::Point<geometry::Wall> at) {
    add_piece(project, id, at, kOutside);
    make_light(project, id, 1);
    hang_from_the_rail(project, id, {HangerType::two_rings, 100, 200, {}, {}, {}});
}

}  // namespace

TEST_CASE("Two rail hooks do not sit on one spot, and the lower piece is moved") {
    wall::Project project = kelp_on_the_rail();
    // Its left hook is at 1262 mm, where Kelp's right one is at 1250.
    add_on_rail(project, "dune", {1212, 860});
    const std::vector<wall::Finding> found = findings_of("rail-clear", project);
    REQUIRE(found.size() == 2);
    CHECK(found[0].severity == Severity::stop);
    CHECK(found[0].pieces == std::vector<wall::PieceId>{{"kelp"}, {"dune"}});
    CHECK(*found[0].measured == Approx(12));
    CHECK(*found[0].wanted == Approx(20));
    // Clear of Kelp's right edge at 1300 mm, since Dune hangs below it.
    CHECK(found[0].text ==
          "Rail hooks of Kelp and Dune would be 12 mm apart from middle to middle, and take 20 mm; "
          "move Dune 38 mm to the right.");
    piece_named(project, "dune").at->x = 1250;
    CHECK(findings_of("rail-clear", project).empty());
}

TEST_CASE("Hooks that touch are clear of each other") {
    wall::Project project = kelp_on_the_rail();
    add_on_rail(project, "dune", {1320, 1300});
    piece_named(project, "kelp").hanger.ring_spacing = 290;  // The right one at 1295 mm.
    piece_named(project, "dune").hanger.ring_spacing = 290;  // The left one at 1325 mm.
    CHECK(findings_of("rail-clear", project).empty());
    piece_named(project, "dune").at->x = 1310;
    CHECK(findings_of("rail-clear", project).empty());
    piece_named(project, "dune").at->x = 1309;
    CHECK(only_finding("rail-clear", project).severity == Severity::stop);
}

TEST_CASE("A cord from the rail does not run behind a piece between them") {
    wall::Project project = kelp_on_the_rail();
    add_piece(project, "dune", {1200, 1760}, {100, 140});
    make_light(project, "dune", 0.4);
    const wall::Finding found = only_finding("rail-clear", project);
    CHECK(found.severity == Severity::mind);
    CHECK(found.pieces == std::vector<wall::PieceId>{{"kelp"}, {"dune"}});
    CHECK(found.text ==
          "One rail cord of Kelp runs behind Dune and pushes it off the wall; move Kelp 50 mm to "
          "the left.");
    wall::Project wide = project;
    piece_named(wide, "dune").at->x = 1000;
    frame_named(wide, "dune").outside = {300, 140};
    CHECK(only_finding("rail-clear", wide).text ==
          "The rail cords of Kelp run behind Dune and push it off the wall; move Kelp 250 mm to "
          "the left.");
    piece_named(wide, "dune").at->x = 940;
    frame_named(wide, "dune").outside = {420, 140};
    piece_named(wide, "dune").state = wall::PieceState::hung;
    CHECK(only_finding("rail-clear", wide).text.find("hang Kelp another way, or elsewhere") !=
          std::string::npos);  // It would have to go 310 mm, and is 300 mm wide.
    piece_named(project, "dune").at->x = 1250;
    CHECK(findings_of("rail-clear", project).empty());
    piece_named(project, "dune").at = geometry::Point<geometry::Wall>{1200, 1100};
    CHECK(findings_of("rail-clear", project).empty());  // Not between; they overlap.
    piece_named(project, "dune").at = geometry::Point<geometry::Wall>{1200, 2210};
    CHECK(findings_of("rail-clear", project).empty());  // Above the rail.
}

TEST_CASE("What hangs counts too, and stays where it is") {
    wall::Project project = kelp_on_the_rail();
    add_piece(project, "dune", {1200, 1760}, {100, 140});
    make_light(project, "dune", 0.4);
    piece_named(project, "kelp").state = wall::PieceState::hung;
    CHECK(only_finding("rail-clear", project).text ==
          "One rail cord of Kelp runs behind Dune and pushes it off the wall; move Dune 50 mm to "
          "the left.");
    piece_named(project, "dune").state = wall::PieceState::hung;
    CHECK(only_finding("rail-clear", project).text ==
          "One rail cord of Kelp runs behind Dune and pushes it off the wall; hang Kelp another "
          "way, or elsewhere.");
}

TEST_CASE("Nobody is sent where there is no room") {
    wall::Project project = kelp_on_the_rail();
    add_piece(project, "dune", {1200, 1760}, {100, 140});
    make_light(project, "dune", 0.4);
    add_piece(project, "reef", {880, 1300}, {100, 400});  // Only 20 mm to the left of Kelp.
    make_light(project, "reef", 0.4);
    CHECK(only_finding("rail-clear", project).text.find("move Kelp 50 mm to the right") !=
          std::string::npos);
    add_piece(project, "shoal", {1340, 1300}, {100, 400});
    make_light(project, "shoal", 0.4);
    CHECK(only_finding("rail-clear", project).text.find("move Dune 50 mm to the left") !=
          std::string::npos);
}
