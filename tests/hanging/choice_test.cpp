#include "hanging/choice.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

namespace wallwright::hanging {

namespace {

using wall::FixingKind;
using wall::HangerType;
using wall::Stock;

/// One planned piece of 400 x 500 mm.
struct OnePiece {
    wall::Project project = scenes::wall_of(3600, 2400);
    wall::Catalogue catalogue = scenes::small_catalogue();

    OnePiece(HangerType hanger, double high_kg) {
        wall::Piece& piece = scenes::add_piece(project, "kelp", {1000, 1300}, {400, 500});
        piece.hanger.type = hanger;
        if (hanger == HangerType::sawtooth)
            piece.hanger.drop = 60;                 // Deep enough to hide any hook.
        piece.weighed = Kilograms{high_kg / 1.02};  // A scale's 2 % are added again.
    }

    [[nodiscard]] std::string choice(const std::vector<Stock>& stock = {}) const {
        const auto offer = choose(jobs_of(project, catalogue).front(), catalogue, Drawer(stock));
        return offer ? offer->type->id.text : "nothing";
    }
};

Stock some(const std::string& type, int count) {
    return {{type}, count, {}};
}

}  // namespace

TEST_CASE("The weakest fixing that carries the piece with its margin is chosen") {
    CHECK(OnePiece(HangerType::sawtooth, 1.24).choice() == "hook_small");
    CHECK(OnePiece(HangerType::sawtooth, 1.3).choice() == "hook_large");
    CHECK(OnePiece(HangerType::sawtooth, 2.6).choice() == "screw");
    CHECK(OnePiece(HangerType::two_rings, 2.49).choice() == "hook_small");
    CHECK(OnePiece(HangerType::strips, 0.5).choice() == "strip_small");
}

TEST_CASE("Strips that need only the four corners come before weaker ones that need more") {
    // Small: 1.5 x 1.2 / 0.4 = 5 pairs; medium: 2.
    CHECK(OnePiece(HangerType::strips, 1.2).choice() == "strip_medium");
    // Medium: 1.5 x 4.9 / 1.3 = 6 pairs; large: 5. Neither stays with the corners, and 5 are fewer
    // to buy.
    CHECK(OnePiece(HangerType::strips, 4.9).choice() == "strip_large");
    CHECK(OnePiece(HangerType::strips, 4.9).choice({some("strip_medium", 6)}) == "strip_medium");
}

TEST_CASE("What is in the drawer comes before what must be bought") {
    CHECK(OnePiece(HangerType::sawtooth, 1.0).choice({some("screw", 1)}) == "screw");
    CHECK(OnePiece(HangerType::sawtooth, 1.0).choice({some("screw", 1), some("hook_large", 1)}) ==
          "hook_large");
    CHECK(OnePiece(HangerType::strips, 0.5).choice({some("strip_large", 2)}) == "strip_large");
}

TEST_CASE("Enough of a stronger kind comes before too few of a weaker one") {
    CHECK(OnePiece(HangerType::two_rings, 1.0).choice({some("hook_small", 1), some("screw", 2)}) ==
          "screw");
    CHECK(OnePiece(HangerType::two_rings, 1.0).choice({some("hook_large", 1)}) == "hook_large");
}

TEST_CASE("A fixing that stays behind the frame comes before a weaker hook that would show") {
    OnePiece one(HangerType::sawtooth, 1.0);
    one.project.pieces.front().hanger.drop = 30;
    CHECK(one.choice() == "hook_small");
    one.project.pieces.front().hanger.drop = 20;
    CHECK(one.choice() == "screw");
    std::erase_if(one.catalogue.fixings,
                  [](const wall::FixingType& type) { return type.kind == FixingKind::screw; });
    CHECK(one.choice() == "hook_small");
}

TEST_CASE("Stock that is too weak for the piece is passed over") {
    CHECK(OnePiece(HangerType::sawtooth, 2.0).choice({some("hook_small", 10)}) == "hook_large");
}

TEST_CASE("A piece that hangs already takes nothing from the drawer") {
    OnePiece one(HangerType::sawtooth, 1.0);
    one.project.pieces.front().state = wall::PieceState::hung;
    CHECK(one.choice({some("screw", 5)}) == "hook_small");
}

TEST_CASE("Where nothing is strong enough the strongest is offered") {
    CHECK(OnePiece(HangerType::sawtooth, 40).choice() == "screw");
    CHECK(OnePiece(HangerType::strips, 12).choice() == "strip_large");
}

TEST_CASE("A strip that lies flat is offered before a stronger one that does not") {
    OnePiece one(HangerType::strips, 12);
    one.project.frames.front().moulding_width = 17;
    CHECK(one.choice() == "strip_medium");
}

TEST_CASE("Brick, concrete and tile get screws, and hooks only where there are no screws") {
    OnePiece one(HangerType::sawtooth, 1.0);
    one.project.room.surface =
        GENERATE(wall::Surface::brick, wall::Surface::concrete, wall::Surface::tile);
    CHECK(one.choice() == "screw");
    std::erase_if(one.catalogue.fixings,
                  [](const wall::FixingType& type) { return type.kind == FixingKind::screw; });
    CHECK(one.choice() == "hook_small");
}

TEST_CASE("Fewer packs to buy come before a weaker kind") {
    OnePiece one(HangerType::two_rings, 1.0);
    CHECK(one.choice() == "hook_small");
    one.catalogue.fixings[4].pack = 2;
    CHECK(one.choice() == "hook_large");
    one.catalogue.fixings[4].price = 5;
    one.catalogue.fixings[3].price = 2;
    CHECK(one.choice() == "hook_small");
    one.project.stock = {{{"hook_large"}, 0, {}, 3.5}};
    CHECK(one.choice() == "hook_large");
    one.project.stock.front().pack = 1;
    CHECK(one.choice() == "hook_small");
}

TEST_CASE("A wall that must have no holes gets what makes none, where that goes with the hanger") {
    OnePiece one(HangerType::two_rings, 1.0);
    wall::FixingType rail;
    rail.id = {"rail"};
    rail.kind = FixingKind::rail_hook;
    rail.rated = {10};
    rail.footprint = {20, 50};
    one.catalogue.fixings.push_back(rail);
    one.project.room.no_holes = true;
    CHECK(one.choice() == "hook_small");
    one.project.room.rail = 2100;
    CHECK(one.choice() == "rail");
    one.project.room.rail = 1700;  // The piece's top is at 1800.
    CHECK(one.choice() == "hook_small");
    one.project.room.rail = 2100;
    one.project.room.no_holes = false;
    CHECK(one.choice() == "hook_small");  // Its cord would be seen.
}

TEST_CASE("Where the ground shakes a closed hook comes before an open one, if it carries") {
    OnePiece one(HangerType::two_rings, 1.0);
    wall::FixingType closed = one.catalogue.fixings[5];
    closed.id = {"closed"};
    closed.closed = true;
    one.catalogue.fixings.push_back(closed);
    CHECK(one.choice({some("hook_small", 2)}) == "hook_small");
    one.project.room.shakes = true;
    CHECK(one.choice({some("hook_small", 2)}) == "closed");
    one.catalogue.fixings.back().rated = {0.5};
    CHECK(one.choice() == "hook_small");
    one.catalogue.fixings.back().rated = {15};
    one.project.pieces.front().hanger.type = HangerType::sawtooth;
    one.project.pieces.front().hanger.drop = 60;
    CHECK(one.choice() == "hook_small");
}

TEST_CASE("A plate does not show above the frame where a pack of something else hides it") {
    OnePiece one(HangerType::sawtooth, 1.0);
    CHECK(one.choice({some("hook_small", 1)}) == "hook_small");
    one.project.pieces.front().hanger.drop = 12;
    CHECK(one.choice({some("hook_small", 1)}) == "screw");
    one.catalogue.fixings[5].cores = {wall::Core::masonry};
    one.project.room.core = wall::Core::plasterboard;  // No other way: then the one at hand.
    one.project.style.weak_wall_share = 1;
    CHECK(one.choice({some("hook_small", 1)}) == "hook_small");
}

TEST_CASE("Keyholes get screws with a head, whatever else is cheaper") {
    CHECK(OnePiece(HangerType::keyholes, 1.0).choice({some("hook_small", 9)}) == "screw");
}

TEST_CASE("What is made for hollow walls is not chosen while the wall is not known") {
    OnePiece one(HangerType::sawtooth, 2.0);
    one.catalogue.fixings[4].cores = {wall::Core::plasterboard};
    CHECK(one.choice() == "screw");
    one.project.room.core = wall::Core::plasterboard;
    CHECK(one.choice() == "hook_large");
    one.project.room.core = wall::Core::masonry;
    CHECK(one.choice() == "screw");
}

TEST_CASE("Paint on concrete is as hard as concrete") {
    OnePiece one(HangerType::sawtooth, 1.0);
    one.project.room.core = wall::Core::concrete;
    CHECK(one.choice() == "screw");
    one.project.room.core = wall::Core::masonry;
    CHECK(one.choice() == "hook_small");
}

TEST_CASE("A catalogue without a fixing for the hanger gives nothing") {
    OnePiece one(HangerType::strips, 1.0);
    std::erase_if(one.catalogue.fixings,
                  [](const wall::FixingType& type) { return type.kind == FixingKind::strip_pair; });
    CHECK(one.choice() == "nothing");
}

}  // namespace wallwright::hanging
