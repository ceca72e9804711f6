#include "hanging/capacity.h"

#include "hanging/fixings.h"
#include "hanging/nails.h"
#include "hanging/studs.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using wall::Core;
using wall::FixingKind;
using wall::FixingType;

FixingType hook() {
    FixingType type;
    type.id = {"hook"};
    type.title = "hook";
    type.kind = FixingKind::nail_hook;
    type.rated = {10};
    type.footprint = {10, 25};
    return type;
}

FixingType screw(std::vector<Core> cores, bool in_stud = false) {
    FixingType type = hook();
    type.id = {"own"};
    type.title = "own screw";
    type.kind = FixingKind::screw;
    type.footprint = {8, 8};
    type.cores = std::move(cores);
    type.in_stud = in_stud;
    return type;
}

/// Studs of 45 mm in every 400 mm, the first with its middle at 100.
wall::Room room_of(Core core, bool studs = false) {
    wall::Room room = scenes::wall_of(4000, 2400).room;
    room.core = core;
    if (studs)
        room.studs = wall::Studs{100, 400, 45};
    return room;
}

Capacity of(const FixingType& type, const wall::Room& room, double across = 300) {
    return capacity_at(room, wall::HangingStyle{}, type, across);
}

}  // namespace

// An engineering reference that cites USDA Forest Products Laboratory, FPL-0100: wood of specific
// gravity 0.45 and a nail 0.203 in thick bear 38 lb for each inch.
TEST_CASE("A nail resists being pulled out of wood as the reference says") {
    const double inch = units::kMmPerInch;
    const Newtons pound = weight_of(Kilograms{units::kKgPerPound});
    CHECK(nail_withdrawal(0.45, 0.203 * inch, inch) / pound == Approx(38).margin(0.5));
    CHECK(nail_withdrawal(0.45, 0.203 * inch, 2 * inch) / pound == Approx(76.1).margin(0.1));
}

TEST_CASE("A screw is on a stud when wood is left on both sides of it") {
    const wall::Studs studs{100, 400, 45};
    CHECK(on_stud(studs, 100));
    CHECK(on_stud(studs, 512.5));
    CHECK_FALSE(on_stud(studs, 513));
    CHECK(on_stud(studs, -287.5));
    CHECK_FALSE(on_stud(studs, 300));
}

TEST_CASE("One hook moves to the middle of the nearest stud, two to where both find wood") {
    const wall::Studs studs{100, 400, 45};
    CHECK(*move_onto_studs(studs, {530}) == Approx(-30));
    CHECK(*move_onto_studs(studs, {460}) == Approx(40));
    // 410 apart: 5 mm off the middle on each side at best.
    CHECK(*move_onto_studs(studs, {140, 550}) == Approx(-45));
    CHECK_FALSE(move_onto_studs(studs, {140, 340}));
}

TEST_CASE("After the move that is proposed every place lies on a stud, and none is shorter") {
    rc::prop("for any studs", [] {
        const auto length = [](int low, int high) { return *rc::gen::inRange(low, high) * 1.0; };
        const wall::Studs studs{length(0, 700), length(300, 650), length(30, 60)};
        std::vector<double> places{length(0, 4000)};
        if (*rc::gen::arbitrary<bool>())
            places.push_back(places[0] + length(10, 1300));
        const auto all_on = [&](double move) {
            return std::ranges::all_of(places,
                                       [&](double place) { return on_stud(studs, place + move); });
        };
        const auto move = move_onto_studs(studs, places);
        if (move)
            RC_ASSERT(all_on(*move));
        for (int by = -static_cast<int>(studs.spacing) / 2; by <= studs.spacing / 2; ++by)
            if (all_on(by)) {
                RC_ASSERT(move.has_value());
                RC_ASSERT(std::abs(*move) <= std::abs(by) + studs.width);
            }
    });
}

TEST_CASE("Any fixing counts in full in a wall that nobody has named, and half in a weak one") {
    CHECK(of(hook(), room_of(Core::unknown)).rated.value == 10);
    CHECK(of(hook(), room_of(Core::masonry)).rated.value == 10);
    CHECK(of(hook(), room_of(Core::plasterboard)).rated.value == 5);
    CHECK(of(hook(), room_of(Core::lath)).rated.value == 5);
    wall::HangingStyle style;
    style.weak_wall_share = 0.3;
    CHECK(capacity_at(room_of(Core::lath), style, hook(), 0).rated.value == Approx(3));
    CHECK(of(screw({Core::plasterboard}), room_of(Core::plasterboard)).rated.value == 10);
}

TEST_CASE("What is made for other walls does not go into this one") {
    CHECK(of(screw({Core::masonry}), room_of(Core::plasterboard)).unfit == Unfit::core);
    CHECK(of(screw({Core::masonry}), room_of(Core::masonry)).unfit == Unfit::no);
    CHECK(of(screw({Core::masonry}), room_of(Core::unknown)).unfit == Unfit::no);
    wall::Room brick = room_of(Core::unknown);
    brick.surface = wall::Surface::brick;
    CHECK(of(screw({Core::plasterboard}), brick).unfit == Unfit::core);
    CHECK(of(screw({Core::plasterboard}), room_of(Core::wood)).unfit == Unfit::core);
    // Studs mean board on them.
    CHECK(of(screw({Core::masonry}), room_of(Core::unknown, true)).unfit == Unfit::core);
}

TEST_CASE("A stud makes the difference for what needs it, what is weak in board and what opens") {
    const wall::Room room = room_of(Core::plasterboard, true);
    CHECK(of(screw({}, true), room, 300).unfit == Unfit::stud);
    CHECK(of(screw({}, true), room, 500).unfit == Unfit::no);
    CHECK(of(screw({}, true), room, 500).on_stud);
    CHECK(of(screw({}, true), room_of(Core::wood)).unfit == Unfit::no);
    CHECK(of(screw({}, true), room_of(Core::masonry)).unfit == Unfit::stud);
    CHECK(of(screw({}), room, 300).rated.value == 5);
    CHECK(of(screw({}), room, 500).rated.value == 10);
    CHECK(of(screw({Core::plasterboard}), room, 500).unfit == Unfit::hollow);
}

TEST_CASE("Nails hold in a stud by what is left of them behind the board") {
    FixingType type = hook();
    type.nails = wall::Nails{2, 1.4, 25};
    const Capacity stud = of(type, room_of(Core::plasterboard, true), 500);
    CHECK(stud.on_stud);
    CHECK(stud.rated.value == 10);
    REQUIRE(stud.nails_hold);
    CHECK(*stud.nails_hold == 2 * nail_withdrawal(kStudGravity, 1.4, 12.5));
    CHECK(*of(type, room_of(Core::wood)).nails_hold == 2 * nail_withdrawal(kStudGravity, 1.4, 25));
    CHECK_FALSE(of(type, room_of(Core::masonry)).nails_hold);
    type.nails->length = 20;
    const Capacity board = of(type, room_of(Core::plasterboard, true), 500);
    CHECK_FALSE(board.on_stud);
    CHECK(board.rated.value == 5);
    CHECK_FALSE(board.nails_hold);
}

TEST_CASE("A strip and a rail hook do not care what is behind the paint") {
    FixingType type = hook();
    type.kind = GENERATE(FixingKind::strip_pair, FixingKind::rail_hook);
    const Capacity capacity = of(type, room_of(Core::plasterboard));
    CHECK(capacity.rated.value == 10);
    CHECK(capacity.unfit == Unfit::no);
}

namespace {

/// One piece of 400 x 500 mm with its sawtooth's hook at 330 mm, 30 mm beside nothing but board.
struct Hollow {
    wall::Project project = scenes::wall_of(4000, 2400);
    wall::Catalogue catalogue;

    explicit Hollow(double high_kg) {
        wall::Piece& piece = scenes::add_piece(project, "kelp", {330, 1300}, {400, 500});
        piece.hanger.type = wall::HangerType::cord_one_hook;
        piece.weighed = Kilograms{high_kg / 1.02};
        project.room = room_of(Core::plasterboard, true);
        catalogue.fixings = {hook(), screw({}, true)};
        catalogue.fixings[1].rated = {20};
    }

    [[nodiscard]] std::vector<std::string> said() const {
        std::vector<std::string> words;
        const std::vector<Hanging> hangings = hang_all(project, catalogue);
        for (const wall::Finding& finding : hangings.at(0).findings)
            words.push_back(std::string(name_of(finding.severity)) + " " + finding.rule + ": " +
                            finding.text);
        return words;
    }
};

}  // namespace

TEST_CASE("A piece too heavy for the board is told how near a stud is") {
    CHECK(Hollow(2).said().empty());
    const auto words = Hollow(6).said();
    REQUIRE(words.size() == 2);
    CHECK(words[1] ==
          "note fixing-suits-wall: Kelp: move it 30 mm to the left and its hook falls on a stud, "
          "where own screw would hold it.");
    Hollow pinned(6);
    pinned.project.pieces.front().pinned = true;
    CHECK(pinned.said().size() == 1);
    Hollow heavy(30);
    CHECK(heavy.said().size() == 1);
}

TEST_CASE("Where the ground shakes a stud for a closed hook is told of, and no other") {
    Hollow one(2);
    one.project.room.shakes = true;
    CHECK(one.said().empty());
    one.catalogue.fixings[1].closed = true;
    CHECK(one.said() ==
          std::vector<std::string>{
              "note fixing-suits-wall: Kelp: move it 30 mm to the left and its hook falls on a "
              "stud, where own screw would hold it, closed."});
}

TEST_CASE("The person's own fixing that does not suit the wall is a stop that says why") {
    Hollow one(2);
    one.project.pieces.front().fixing = wall::FixingTypeId{"own"};
    CHECK(one.said().at(0) ==
          "stop fixing-suits-wall: Kelp: its fixing (own screw) holds only in a stud, and it does "
          "not fall on one; move the piece or take another fixing.");
    one.project.room.studs.reset();
    CHECK(one.said() ==
          std::vector<std::string>{
              "stop fixing-suits-wall: Kelp: its fixing (own screw) holds only in a stud, and "
              "nobody has said where the studs are; find them or take another fixing."});
    one.catalogue.fixings[1] = screw({Core::masonry, Core::concrete});
    CHECK(one.said() ==
          std::vector<std::string>{"stop fixing-suits-wall: Kelp: its fixing (own screw) is made "
                                   "for masonry or concrete, and this wall is of plasterboard; "
                                   "take one that is made for it."});
    one.project.room.core = Core::unknown;
    CHECK(one.said() ==
          std::vector<std::string>{"note fixing-suits-wall: Kelp: its fixing (own screw) is made "
                                   "for masonry or concrete, and nobody has said what this wall "
                                   "is; find out before drilling."});
    one.catalogue.fixings[1] = screw({Core::plasterboard});
    one.project.room = room_of(Core::plasterboard, true);
    one.project.pieces.front().at = geometry::Point<geometry::Wall>{300, 1300};
    CHECK(one.said() ==
          std::vector<std::string>{"stop fixing-suits-wall: Kelp: its fixing (own screw) opens "
                                   "behind the board, and there is a stud; take a screw into the "
                                   "stud, or move the piece."});
}

}  // namespace wallwright::hanging
