#include "hanging/load_check.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using wall::Finding;
using wall::HangerType;
using wall::Severity;

/// One planned piece on one type of fixing.
struct OnePiece {
    wall::Project project = scenes::wall_of(3600, 2400);
    wall::Catalogue catalogue = scenes::small_catalogue();

    OnePiece(HangerType hanger, double high_kg, geometry::Size outside = {400, 500}) {
        wall::Piece& piece = scenes::add_piece(project, "kelp", {1000, 1300}, outside);
        piece.hanger.type = hanger;
        piece.weighed = Kilograms{high_kg / 1.02};  // A scale's 2 % are added again.
    }

    [[nodiscard]] std::vector<Finding> on(const std::string& type) const {
        const Job job = jobs_of(project, catalogue).front();
        return check_load(job, offer_of(job, *find(catalogue, wall::FixingTypeId{type})));
    }
};

}  // namespace

TEST_CASE("A fixing within its rating has nothing to say") {
    CHECK(OnePiece(HangerType::two_rings, 2.0).on("hook_small").empty());
    CHECK(OnePiece(HangerType::strips, 1.0).on("strip_small").empty());
}

TEST_CASE("An overloaded hook is a stop that says load, limit and what to do") {
    const auto findings = OnePiece(HangerType::cord_one_hook, 3.0).on("hook_large");
    REQUIRE(findings.size() == 1);
    const Finding& finding = findings.front();
    CHECK(finding.rule == "weight-within-rating");
    CHECK(finding.severity == Severity::stop);
    // 20 mm deep, the hook 450 mm above the foot.
    CHECK(*finding.measured == Approx(3.0 * std::hypot(1, 10.0 / 450)));
    CHECK(*finding.wanted == Approx(2.5));
    CHECK(finding.unit == "kg");
    CHECK(finding.text ==
          "Kelp: its fixing (hook_large) would carry 3.00 kg and may carry 2.50 kg (rated 5.00 kg, "
          "margin 2); take a stronger fixing or make the piece lighter.");
}

TEST_CASE("An overloaded strip is a stop that counts the strips") {
    const auto findings = OnePiece(HangerType::strips, 3.0).on("strip_small");
    REQUIRE(findings.size() == 1);
    CHECK(findings.front().severity == Severity::stop);
    CHECK(*findings.front().measured == Approx(0.5));
    CHECK(*findings.front().wanted == Approx(0.4 / 1.5));
    CHECK(findings.front().text ==
          "Kelp: each of its 6 fixings (strip_small) would carry 500 g and may carry 267 g (rated "
          "400 g, margin 1.5); take a stronger strip, hang it from rings on hooks or make the "
          "piece lighter.");
}

TEST_CASE("A piece heavier than strips may hold in all is stopped however many there are") {
    OnePiece one(HangerType::strips, 7.1);
    one.catalogue.fixings[2].rated = {9};
    one.project.frames.front().moulding_width = 30;
    const auto findings = one.on("strip_large");
    REQUIRE(findings.size() == 1);
    CHECK(findings.front().rule == "weight-within-rating");
    CHECK(*findings.front().measured == Approx(7.1));
    CHECK(*findings.front().wanted == 7);
    CHECK(findings.front().text ==
          "Kelp: it weighs up to 7.10 kg, more than the 7.00 kg that strips may hold however many; "
          "hang it from rings on hooks or screws.");
    one.project.style.strip_total_most = 8;
    CHECK(one.on("strip_large").empty());
}

TEST_CASE("A back with room for fewer strips than the weight asks for is a stop") {
    const auto findings = OnePiece(HangerType::strips, 1.0, {400, 80}).on("strip_small");
    const auto fit = std::find_if(findings.begin(), findings.end(), [](const Finding& one) {
        return one.rule == "strips-fit-the-back";
    });
    REQUIRE(fit != findings.end());
    CHECK(fit->severity == Severity::stop);
    CHECK(*fit->measured == 2);
    CHECK(*fit->wanted == 4);
    CHECK(fit->text ==
          "Kelp: it asks for 4 pairs (strip_small), and its back has room for 2; take a stronger "
          "strip or hang it from rings on hooks.");
    CHECK(findings.front().rule == "weight-within-rating");
}

TEST_CASE("A strip wider than the moulding is a stop") {
    OnePiece one(HangerType::strips, 0.5);
    one.project.frames.front().moulding_width = 12;
    const auto findings = one.on("strip_small");
    REQUIRE(findings.size() == 1);
    CHECK(findings.front().rule == "strips-fit-the-back");
    CHECK(findings.front().severity == Severity::stop);
    CHECK(findings.front().text ==
          "Kelp: a strip 16 mm wide (strip_small) cannot lie flat on a moulding 12 mm wide; take a "
          "narrower strip or hang it from a hanger on hooks.");
}

TEST_CASE("A strip that hangs far over the rebate is a note, one that hardly does is nothing") {
    OnePiece one(HangerType::strips, 0.5);
    // 20 mm of moulding, 6 mm of it over the rebate: 14 mm of wood at the back.
    CHECK(one.on("strip_small").empty());
    const auto findings = one.on("strip_large");
    REQUIRE(findings.size() == 1);
    CHECK(findings.front().rule == "strips-fit-the-back");
    CHECK(findings.front().severity == Severity::note);
    CHECK(*findings.front().measured == 19);
    CHECK(*findings.front().wanted == 14);
    one.project.frames.front().rebate_width = 5;
    CHECK(one.on("strip_large").empty());
}

TEST_CASE(
    "A hook whose plate stands above the frame is a note, and a screw in its place is nothing") {
    OnePiece one(HangerType::sawtooth, 1.0);
    const auto findings = one.on("hook_large");
    REQUIRE(findings.size() == 1);
    CHECK(findings.front().rule == "hanger-fits");
    CHECK(findings.front().severity == Severity::note);
    CHECK(*findings.front().measured == Approx(15));
    CHECK(*findings.front().wanted == 38);
    CHECK(findings.front().text ==
          "Kelp: the hook's plate, 38 mm high (hook_large), shows above the frame, which rests on "
          "it 15 mm below its top; take a smaller hook or a screw.");
    CHECK(one.on("screw").empty());
}

TEST_CASE("Strips are refused on a rough back and behind what cannot be replaced") {
    OnePiece one(HangerType::strips, 0.5);
    one.project.frames.front().rough_back = true;
    auto findings = one.on("strip_small");
    REQUIRE(findings.size() == 1);
    CHECK(findings.front().rule == "strips-fit-the-back");
    CHECK(findings.front().severity == Severity::stop);
    CHECK(findings.front().text ==
          "Kelp: its back is rough, dusty or soft, and strips do not hold on it; give it a hanger "
          "and hang it on hooks or screws.");
    one.project.frames.front().rough_back = false;
    one.project.pieces.front().irreplaceable = true;
    findings = one.on("strip_small");
    REQUIRE(findings.size() == 1);
    CHECK(findings.front().rule == "irreplaceable-on-strips");
    CHECK(findings.front().severity == Severity::stop);
    OnePiece hooks(HangerType::two_rings, 0.5);
    hooks.project.frames.front().rough_back = true;
    hooks.project.pieces.front().irreplaceable = true;
    CHECK(hooks.on("hook_small").empty());
}

TEST_CASE("A rating that a weak wall cuts is told with what the packet says") {
    OnePiece one(HangerType::two_rings, 3.0);
    one.project.room.core = wall::Core::plasterboard;
    const auto findings = one.on("hook_large");
    REQUIRE(findings.size() == 1);
    CHECK(findings.front().text ==
          "Kelp: each of its 2 fixings (hook_large) would carry 1.50 kg and may carry 1.25 kg "
          "(rated 5.00 kg, of which 2.50 kg count in plasterboard, margin 2); take a stronger "
          "fixing or make the piece lighter.");
}

TEST_CASE("What failed at its rating is given a wider margin") {
    OnePiece one(HangerType::two_rings, 3.0);
    one.catalogue.fixings[4].breaking = true;
    const auto findings = one.on("hook_large");
    REQUIRE(findings.size() == 1);
    CHECK(*findings.front().wanted == Approx(1.25));
    CHECK_THAT(findings.front().text, Catch::Contains("(failed at 5.00 kg, margin 4)"));
}

TEST_CASE("Nails that the frame's depth would pull out of the wood are a stop") {
    OnePiece one(HangerType::two_rings, 2.0);
    one.project.room.core = wall::Core::wood;
    one.catalogue.fixings[4].nails = wall::Nails{1, 1.2, 15};
    CHECK(one.on("hook_large").empty());
    one.project.frames.front().depth = 1200;
    const auto findings = one.on("hook_large");
    REQUIRE(findings.size() == 1);
    CHECK(findings.front().rule == "weight-within-rating");
    CHECK(findings.front().unit == "N");
    // 19.6 N x 600 / 375 on two; one nail holds 1380 x 0.35^2.5 x 0.0472 in x 0.591 in = 2.79 lb.
    CHECK(*findings.front().measured == Approx(15.69).margin(0.01));
    CHECK(*findings.front().wanted == Approx(12.4).margin(0.05));
}

TEST_CASE("Loads and lengths are said in the person's unit") {
    OnePiece one(HangerType::sawtooth, 3.0);
    one.project.unit = units::LengthUnit::inch;
    const auto findings = one.on("hook_large");
    REQUIRE_FALSE(findings.empty());
    CHECK(findings.front().text ==
          "Kelp: its fixing (hook_large) would carry 6 lb 10 oz and may carry 5 lb 8 oz (rated 11 "
          "lb 0 oz, margin 2); take a stronger fixing or make the piece lighter.");
    CHECK(findings.front().unit == "kg");
}

}  // namespace wallwright::hanging
