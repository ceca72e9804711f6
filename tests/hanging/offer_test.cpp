#include "hanging/offer.h"

#include "hanging/strips.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <cmath>

namespace wallwright::hanging {

namespace {

using wall::FixingKind;
using wall::HangerType;

/// One planned piece of 400 x 500 mm and a weight whose high side is exactly the one asked for.
struct OnePiece {
    wall::Project project = scenes::wall_of(3600, 2400);
    wall::Catalogue catalogue = scenes::small_catalogue();

    OnePiece(HangerType hanger, double high_kg) {
        wall::Piece& piece = scenes::add_piece(project, "kelp", {1000, 1300}, {400, 500});
        piece.hanger.type = hanger;
        piece.weighed = Kilograms{high_kg / 1.02};  // A scale's 2 % are added again.
    }

    [[nodiscard]] Offer offer(const std::string& type) const {
        return offer_of(jobs_of(project, catalogue).front(),
                        *find(catalogue, wall::FixingTypeId{type}));
    }
};

}  // namespace

TEST_CASE("A rating is kept when the load with its margin just reaches it") {
    CHECK(within_rating({1.8}, {1.2}, 1.5));
    CHECK(within_rating({0.3}, {0.1}, 3));
    CHECK_FALSE(within_rating({1.8}, {1.2001}, 1.5));
}

TEST_CASE("Keyholes drop over screws alone, and rings or a cord over one hook hang from a rail") {
    CHECK(goes_with(HangerType::keyholes, FixingKind::screw));
    CHECK_FALSE(goes_with(HangerType::keyholes, FixingKind::nail_hook));
    CHECK_FALSE(goes_with(HangerType::keyholes, FixingKind::strip_pair));
    for (const HangerType hanger : {HangerType::strips, HangerType::sawtooth, HangerType::keyholes,
                                    HangerType::cord_two_hooks})
        CHECK_FALSE(goes_with(hanger, FixingKind::rail_hook));
    CHECK(goes_with(HangerType::two_rings, FixingKind::rail_hook));
    CHECK(goes_with(HangerType::cord_one_hook, FixingKind::rail_hook));
}

TEST_CASE("Neither teeth nor keyholes go on a closed hook") {
    wall::FixingType closed;
    closed.kind = FixingKind::screw;
    closed.closed = true;
    CHECK(goes_with(HangerType::two_rings, closed));
    CHECK(goes_with(HangerType::cord_two_hooks, closed));
    CHECK_FALSE(goes_with(HangerType::sawtooth, closed));
    CHECK_FALSE(goes_with(HangerType::keyholes, closed));
    closed.closed = false;
    CHECK(goes_with(HangerType::keyholes, closed));
}

TEST_CASE("Keyholes bear where they are, half of the weight on each") {
    OnePiece one(HangerType::keyholes, 2.0);
    one.project.pieces.front().hanger.drop = 40;
    one.project.pieces.front().hanger.ring_spacing = 300;
    const Offer offer = one.offer("screw");
    REQUIRE(offer.fixings.size() == 2);
    CHECK(offer.fixings[0].at == geometry::Point<geometry::Wall>{1050, 1760});
    CHECK(offer.fixings[1].at == geometry::Point<geometry::Wall>{1350, 1760});
    CHECK(offer.fixings[0].down.value == Approx(9.80665));
    CHECK(carries(offer));
}

// Worked by hand on a square of 100 mm with strips 20 mm wide and high in three corners: middles
// at 13 and 87 mm, their middle a third of 74 mm from the left pair, 37/3 mm left of the frame's.
TEST_CASE("Three pairs turn about their middle, and the one that stands alone bears the most") {
    const std::vector<Share> shares = shares_of({{13, 13}, {87, 13}, {13, 87}}, {100, 100});
    const double third = 74.0 / 3;
    const double spread = 2 * (2 * third * third + 4 * third * third);
    const double turn = 37.0 / 3 / spread;
    REQUIRE(shares.size() == 3);
    CHECK(shares[0].down == Approx(1.0 / 3 - turn * third));
    CHECK(shares[1].down == Approx(1.0 / 3 + 2 * turn * third));
    CHECK(shares[2].down == Approx(1.0 / 3 - turn * third));
    CHECK(shares[0].right == Approx(turn * third));
    CHECK(shares[2].right == Approx(-2 * turn * third));
}

TEST_CASE("Strips go with strips, hooks and screws with all other hangers") {
    CHECK(goes_with(HangerType::strips, FixingKind::strip_pair));
    CHECK_FALSE(goes_with(HangerType::strips, FixingKind::nail_hook));
    for (const HangerType hanger :
         {HangerType::sawtooth, HangerType::two_rings, HangerType::cord_one_hook}) {
        CHECK(goes_with(hanger, FixingKind::nail_hook));
        CHECK(goes_with(hanger, FixingKind::screw));
        CHECK_FALSE(goes_with(hanger, FixingKind::strip_pair));
    }
}

TEST_CASE("Strips share the weight and the top ones lie under the top corners") {
    const Offer offer = OnePiece(HangerType::strips, 1.0).offer("strip_small");
    // 1.5 x 1.0 / 0.4 = 3.75
    CHECK(offer.wanted == 4);
    REQUIRE(offer.fixings.size() == 4);
    for (const Fixing& fixing : offer.fixings) {
        CHECK(fixing.load.value == Approx(0.25));
        CHECK(fixing.rated.value == 0.4);
        CHECK(fixing.kind == FixingKind::strip_pair);
    }
    // Moulding 20, strip 16 x 46: 2 mm inside the edges of 1000..1400 x 1300..1800.
    CHECK(offer.fixings[0].at == geometry::Point<geometry::Wall>{1010, 1775});
    CHECK(offer.fixings[1].at == geometry::Point<geometry::Wall>{1390, 1775});
    CHECK(carries(offer));
    // 20 mm deep: 9.80665 N x 10 / 475.
    REQUIRE(offer.top_pull);
    CHECK(offer.top_pull->value == Approx(9.80665 * 10 / 475));
}

TEST_CASE("A weight for more pairs than one piece gets is not carried") {
    const Offer offer = OnePiece(HangerType::strips, 3.0).offer("strip_small");
    CHECK(offer.wanted == 12);
    CHECK(offer.fixings.size() == kMostPairs);
    CHECK_FALSE(carries(offer));
}

TEST_CASE(
    "A frame so deep that its top strips are pulled more than they are loaded counts the pull") {
    OnePiece one(HangerType::strips, 1.0);
    one.project.frames.front().depth = 1200;
    const Offer offer = one.offer("strip_large");
    // 600 mm off the wall, the top strips 500 - 0.5 - 46 = 453.5 mm up: two of them share the pull.
    REQUIRE(offer.fixings.size() == 2);
    CHECK(offer.fixings[0].load.value == Approx(600 / 453.5 / 2));
}

TEST_CASE("A strip wider than the moulding does not lie flat and so carries nothing") {
    OnePiece one(HangerType::strips, 0.5);
    one.project.frames.front().moulding_width = 15;
    const Offer offer = one.offer("strip_small");
    CHECK_FALSE(offer.lies_flat);
    CHECK_FALSE(carries(offer));
}

TEST_CASE("A sawtooth's hook takes all of the weight and two rings half of it each") {
    const Offer single = OnePiece(HangerType::sawtooth, 2.0).offer("hook_large");
    REQUIRE(single.fixings.size() == 1);
    // Off the wall: 20 mm deep, the hook 485 mm and the rings 375 mm above the foot.
    CHECK(single.fixings[0].load.value == Approx(2.0 * std::hypot(1, 10.0 / 485)));
    CHECK(single.fixings[0].down.value == Approx(2.0 * 9.80665));
    CHECK(single.fixings[0].off_wall.value == Approx(2.0 * 9.80665 * 10 / 485));
    CHECK(single.fixings[0].at == geometry::Point<geometry::Wall>{1200, 1785});
    const Offer pair = OnePiece(HangerType::two_rings, 2.0).offer("hook_large");
    REQUIRE(pair.fixings.size() == 2);
    for (const Fixing& fixing : pair.fixings)
        CHECK(fixing.load.value == Approx(std::hypot(1, 10.0 / 375)));
    REQUIRE(pair.top_pull);
    CHECK(pair.top_pull->value == Approx(2.0 * 9.80665 * 10 / 375));
}

// Cord of 340 mm between rings 300 mm apart over hooks 150 mm apart, worked by hand: T = 0.8146 W,
// each hook takes W/2 down and 0.171 W sideways, together 0.5285 W.
TEST_CASE("A hook under a cord with two hooks takes the sideways pull as well") {
    OnePiece one(HangerType::cord_two_hooks, 2.0);
    wall::Hanger& hanger = one.project.pieces.front().hanger;
    hanger.ring_spacing = 300;
    hanger.hook_spacing = 150;
    hanger.cord_length = 340;
    const Offer offer = one.offer("hook_small");
    REQUIRE(offer.fixings.size() == 2);
    CHECK(offer.fixings[0].load.value == Approx(2.0 * 0.5285).epsilon(0.001));
}

TEST_CASE("Hooks and strips have the margins of the style") {
    OnePiece strips(HangerType::strips, 1.0);
    strips.project.style.strip_margin = 2;
    CHECK(strips.offer("strip_small").margin == 2);
    // 2 x 1.0 / 0.4 = 5, of which the two on the side with fewer would carry more than they may.
    CHECK(strips.offer("strip_small").wanted == 6);
    OnePiece hooks(HangerType::sawtooth, 2.0);
    CHECK(carries(hooks.offer("hook_large")));
    hooks.project.style.fixing_margin = 3;
    CHECK_FALSE(carries(hooks.offer("hook_large")));
}

}  // namespace wallwright::hanging
