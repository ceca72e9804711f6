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
    CHECK(OnePiece(HangerType::sawtooth, 1.25).choice() == "hook_small");
    CHECK(OnePiece(HangerType::sawtooth, 1.3).choice() == "hook_large");
    CHECK(OnePiece(HangerType::sawtooth, 2.6).choice() == "screw");
    CHECK(OnePiece(HangerType::two_rings, 2.5).choice() == "hook_small");
    CHECK(OnePiece(HangerType::strips, 0.5).choice() == "strip_small");
}

TEST_CASE("Strips that need only the four corners come before weaker ones that need more") {
    // Small: 1.5 x 1.2 / 0.4 = 5 pairs; medium: 2.
    CHECK(OnePiece(HangerType::strips, 1.2).choice() == "strip_medium");
    // Medium: 1.5 x 4.9 / 1.3 = 6 pairs; large: 5. Neither stays with the corners.
    CHECK(OnePiece(HangerType::strips, 4.9).choice() == "strip_medium");
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

TEST_CASE("A catalogue without a fixing for the hanger gives nothing") {
    OnePiece one(HangerType::strips, 1.0);
    std::erase_if(one.catalogue.fixings,
                  [](const wall::FixingType& type) { return type.kind == FixingKind::strip_pair; });
    CHECK(one.choice() == "nothing");
}

}  // namespace wallwright::hanging
