#include "hanging/pull.h"

#include "hanging/load_check.h"
#include "hanging/offer.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

namespace wallwright::hanging {

namespace {

/// One planned piece of 300 x 300 mm, as deep as is asked for.
struct Deep {
    wall::Project project = scenes::wall_of(3600, 2400);
    wall::Catalogue catalogue = scenes::small_catalogue();

    Deep(wall::HangerType hanger, double depth) {
        wall::Piece& piece = scenes::add_piece(project, "kelp", {1000, 1300}, {300, 300});
        piece.hanger.type = hanger;
        piece.hanger.drop = 60;
        piece.weighed = Kilograms{1 / 1.02};  // A scale's 2 % are added again.
        project.frames.front().depth = depth;
        project.frames.front().moulding_width = 30;
    }
    [[nodiscard]] Offer offer(const std::string& type) const {
        return offer_of(jobs_of(project, catalogue).front(),
                        *find(catalogue, wall::FixingTypeId{type}));
    }
    [[nodiscard]] std::vector<wall::Finding> on(const std::string& type) const {
        return check_load(jobs_of(project, catalogue).front(), offer(type));
    }
};

}  // namespace

// Worked by hand: hooks 240 mm above the foot are pulled with x / 240 of the load down them.
TEST_CASE("Nails pulled off the wall by more than a quarter of their load are minded") {
    CHECK(Deep(wall::HangerType::two_rings, 119).on("hook_large").empty());
    const Deep deep(wall::HangerType::two_rings, 144);
    const auto findings = deep.on("hook_large");
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].rule == "weight-within-rating");
    CHECK(findings[0].severity == wall::Severity::mind);
    CHECK(*findings[0].measured == Approx(0.3 * 9.80665 / 2));
    CHECK(*findings[0].wanted == Approx(0.25 * 9.80665 / 2));
    CHECK(findings[0].unit == "N");
    CHECK(findings[0].text ==
          "Kelp: each of its hooks (hook_large) would be pulled off the wall with 1.5 N, more than "
          "a quarter of the 4.9 N that it carries down it, and packets rate the load down the wall "
          "alone; take a screw made for this wall or a stud, or hang the piece from farther up its "
          "back.");
    CHECK(carries(deep.offer("hook_large")));
}

TEST_CASE("A pull off the wall beyond the load down it is a stop, and is not taken for safe") {
    const Deep deep(wall::HangerType::two_rings, 490);
    const auto findings = deep.on("hook_large");
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == wall::Severity::stop);
    CHECK_FALSE(carries(deep.offer("hook_large")));
    // A screw holds both ways.
    CHECK(deep.on("screw").empty());
    CHECK(carries(deep.offer("screw")));
    CHECK(hang_all(deep.project, deep.catalogue).at(0).fixing_title == "screw");
}

TEST_CASE("Nails in wood are judged by what they hold there, not by a share") {
    Deep deep(wall::HangerType::two_rings, 144);
    deep.catalogue.fixings[4].nails = wall::Nails{2, 1.4, 25};
    CHECK(deep.on("hook_large").size() == 1);
    deep.project.room.core = wall::Core::wood;
    CHECK(deep.on("hook_large").empty());
}

// Worked by hand: strips 92 mm high, 3 mm in: the top ones' middle is 251 mm above the foot.
TEST_CASE("Strips at the top bear the pull of the whole piece and only their part of the weight") {
    Deep deep(wall::HangerType::strips, 118);
    CHECK(deep.on("strip_large").empty());
    deep.project.frames.front().depth = 130;
    const auto findings = deep.on("strip_large");
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].severity == wall::Severity::mind);
    CHECK(*findings[0].measured == Approx(9.80665 * 65 / 251 / 2));
    CHECK_THAT(findings[0].text, Catch::Contains("each of its top pairs (strip_large) would be "
                                                 "pulled off the wall with 1.3 N, more than a "
                                                 "quarter of the 4.9 N") &&
                                     Catch::Contains("hang it from rings on screws"));
}

}  // namespace wallwright::hanging
