#include "hanging/verdict.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

namespace wallwright::hanging {

namespace {

Verdict verdict_of(const wall::Project& project, const wall::Catalogue& catalogue) {
    return verdict_on(hang_all(project, catalogue).at(0));
}

wall::Project one_piece(wall::HangerType hanger, double kg, const char* fixing) {
    wall::Project project = scenes::wall_of(3600, 2400);
    wall::Piece& piece = scenes::add_piece(project, "kelp", {1000, 1300}, {400, 500});
    piece.hanger.type = hanger;
    piece.weighed = Kilograms{kg / 1.02};  // A scale's 2 % are added again.
    piece.fixing = wall::FixingTypeId{fixing};
    return project;
}

}  // namespace

TEST_CASE("A load up to what the margin leaves is within, and one beyond is over") {
    const wall::Catalogue catalogue = scenes::small_catalogue();
    CHECK(verdict_of(one_piece(wall::HangerType::cord_one_hook, 2.49, "hook_large"), catalogue) ==
          Verdict::within);
    CHECK(verdict_of(one_piece(wall::HangerType::cord_one_hook, 2.51, "hook_large"), catalogue) ==
          Verdict::over);
    Hanging just = hang_all(one_piece(wall::HangerType::two_rings, 2, "hook_large"), catalogue)[0];
    CHECK(limit_of(just) == Approx(0.5));
    just.margin = 3;
    just.use = 0.1 / 0.3;  // A hair more than a third, by rounding alone.
    CHECK(verdict_on(just) == Verdict::within);
}

TEST_CASE("A stud screw where no studs are known does not hold, however little is on it") {
    wall::Catalogue catalogue = scenes::small_catalogue();
    wall::FixingType& screw = catalogue.fixings.emplace_back(catalogue.fixings.back());
    screw.id = {"stud_screw"};
    screw.in_stud = true;
    wall::Project project = one_piece(wall::HangerType::two_rings, 1, "stud_screw");
    project.room.core = wall::Core::plasterboard;
    const Hanging hanging = hang_all(project, catalogue).at(0);
    REQUIRE_FALSE(hanging.fixings.empty());
    CHECK(hanging.use < limit_of(hanging));
    CHECK(verdict_on(hanging) == Verdict::does_not_hold);
    // Studs under both of its rings, 320 mm apart about 1200 mm.
    project.room.studs = wall::Studs{1040, 320, 45};
    CHECK(verdict_of(project, catalogue) == Verdict::within);
}

TEST_CASE("Strips under more weight than strips may hold do not hold, within their rating or not") {
    wall::Catalogue catalogue = scenes::small_catalogue();
    catalogue.fixings[2].rated = {9};
    wall::Project project = one_piece(wall::HangerType::strips, 7.1, "strip_large");
    project.frames.front().moulding_width = 30;
    CHECK(verdict_of(project, catalogue) == Verdict::does_not_hold);
    project.pieces.front().weighed = Kilograms{6.5};
    CHECK(verdict_of(project, catalogue) == Verdict::within);
}

TEST_CASE("A piece without a fixing does not hold") {
    Hanging hanging;
    CHECK(verdict_on(hanging) == Verdict::does_not_hold);
}

}  // namespace wallwright::hanging
