#include "buying/shopping.h"

#include "buying/list_words.h"
#include "support/mount_scenes.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <string>

using namespace wallwright;
using buying::Item;
using buying::Kind;
using buying::List;
using units::Kilograms;
using units::LengthUnit;

namespace {

List list_of(const wall::Project& project, const mounts::CardPlan* card = nullptr) {
    return buying::shopping_list(project, rules::assess(project, scenes::small_catalogue()), card);
}

std::vector<Item> of_kind(const List& list, Kind kind) {
    std::vector<Item> items;
    std::ranges::copy_if(list.items, std::back_inserter(items),
                         [kind](const Item& item) { return item.kind == kind; });
    return items;
}

bool has_title(const List& list, const std::string& part) {
    return std::ranges::any_of(list.items, [&part](const Item& item) {
        return item.title.find(part) != std::string::npos;
    });
}

/// Pieces that need two pairs of medium strips each, in packs of four for 5.
wall::Project with_strips(int pieces) {
    wall::Project project = scenes::wall_of(6000, 2500);
    for (int i = 0; i < pieces; ++i) {
        wall::Piece& piece = scenes::add_piece(project, "p" + std::to_string(i),
                                               {300.0 + 500 * i, 1400}, {300, 400});
        piece.weighed = Kilograms{1.5};
        piece.fixing = wall::FixingTypeId{"strip_medium"};
    }
    project.stock.push_back({wall::FixingTypeId{"strip_medium"}, 0, 4, 5.0});
    return project;
}

mounts::CardPlan planned(const wall::Project& project) {
    mounts::CardOptions options;
    options.seconds = 0;
    options.rounds = 3;
    return mounts::plan_card(project, options, [] { return true; });
}

wall::Project two_layers(std::optional<double> cut_price) {
    wall::Project project = scenes::wall_of(4000, 2500);
    wall::Mount mount;
    mount.under.push_back({});
    scenes::add_with_mount(project, "kelp", {400, 500}, mount, {{210, 297}});
    project.mount_cut_price = cut_price;
    return project;
}

}  // namespace

TEST_CASE("Fixings are bought in whole packs, and what is left over is said") {
    wall::Project project = with_strips(3);
    const std::size_t needed = list_of(project).items.size();
    REQUIRE(needed > 0);
    const Item item = of_kind(list_of(project), Kind::fixings).at(0);
    const auto assessment = rules::assess(project, scenes::small_catalogue());
    const std::size_t count = assessment.hangings[0].fixings.size() * 3;
    const std::size_t packs = (count + 3) / 4;
    CHECK(item.amount == std::to_string(packs) + (packs == 1 ? " pack of 4" : " packs of 4"));
    CHECK(item.price == 5.0 * static_cast<double>(packs));
    CHECK(item.why.find(std::to_string(count) + " needed") == 0);
    CHECK_FALSE(item.later);

    SECTION("What is in the drawer is used first") {
        project.stock[0].count = static_cast<int>(count) - 1;
        const Item less = of_kind(list_of(project), Kind::fixings).at(0);
        CHECK(less.amount == "1 pack of 4");
        CHECK(less.why.find("in the drawer, 3 spare") != std::string::npos);
    }
    SECTION("Nothing is bought where the drawer has all") {
        project.stock[0].count = static_cast<int>(count);
        CHECK(of_kind(list_of(project), Kind::fixings).empty());
    }
    SECTION("What hangs already has its fixings") {
        for (wall::Piece& piece : project.pieces)
            piece.state = wall::PieceState::hung;
        CHECK(list_of(project).items.empty());
    }
}

TEST_CASE("Before fixings that a stop speaks against are bought, a remark says what it is") {
    wall::Project project = with_strips(2);
    project.pieces[0].title = "Kelp";
    project.pieces[1].title = "Dune";
    CHECK(list_of(project).remarks.empty());
    project.pieces[0].weighed = Kilograms{6.9};
    const List list = list_of(project);
    REQUIRE_FALSE(list.remarks.empty());
    CHECK(list.remarks[0].starts_with("Do not buy strip_medium for Kelp before this is mended: "));
    CHECK(list.remarks[0].find("Dune") == std::string::npos);
    // What lies in the drawer is not to be bought anyhow.
    project.stock[0].count = 100;
    CHECK(list_of(project).remarks.empty());
}

TEST_CASE("A later stage takes what an earlier one leaves of its packs") {
    wall::Project project = with_strips(2);
    project.pieces[0].stage = 1;
    project.pieces[1].stage = 2;
    const auto items = of_kind(list_of(project), Kind::fixings);
    const auto assessment = rules::assess(project, scenes::small_catalogue());
    const int each = static_cast<int>(assessment.hangings[0].fixings.size());
    const int first = (each + 3) / 4;
    const int both = (2 * each + 3) / 4;
    REQUIRE(items.size() == (both > first ? 2U : 1U));
    CHECK(items[0].price == 5.0 * first);
    CHECK_FALSE(items[0].later);
    double sum = 0;
    for (const Item& item : items)
        sum += *item.price;
    CHECK(sum == 5.0 * both);
    // What is bought later is what the load check says, by the same count.
    const auto later = hanging::needs(project, assessment.hangings, hanging::Bought::not_yet).at(0);
    CHECK(later.packs == both - first);
}

TEST_CASE("Cord is bought by the metre with its knots, as strong as the heaviest piece asks") {
    wall::Project project = scenes::wall_of(4000, 2500);
    wall::Piece& piece = scenes::add_piece(project, "kelp", {500, 1300}, {400, 500});
    piece.weighed = Kilograms{2};
    piece.hanger = {wall::HangerType::cord_one_hook, 150, 300, 340, {}, {}};
    project.cord_price = 1.5;
    const auto items = of_kind(list_of(project), Kind::cord);
    REQUIRE(items.size() == 1);
    // 340 mm and two knots of 150 mm.
    CHECK(items[0].amount == "1 m");
    CHECK(items[0].price == 1.5);
    // 2.04 kg on the high side of the scale; T = 17/16 of it (8-15-17 triangle), four times that.
    const double needed = 4 * 2.04 * 17 / 16;
    CHECK(items[0].title.find("no less than " + std::to_string(int(std::ceil(needed))) + " kg") !=
          std::string::npos);
    project.unit = LengthUnit::inch;
    const auto inches = of_kind(list_of(project), Kind::cord);
    CHECK(inches.at(0).amount == "3 ft");
    CHECK(*inches[0].price == Approx(1.5 * 0.9144));
    CHECK(inches[0].title.find(" lb") != std::string::npos);
}

TEST_CASE("Frames that are wished for come last, alike ones together") {
    wall::Project project = with_strips(1);
    for (const char* id : {"kelp", "dune", "tide"}) {
        scenes::add_waiting(project, id, {300, id == std::string("tide") ? 500.0 : 400.0}).wished =
            true;
        scenes::frame_named(project, id).price = 12.25;
        scenes::frame_named(project, id).title = "Oak, plain";
    }
    const List list = list_of(project);
    const auto frames = of_kind(list, Kind::frames);
    REQUIRE(frames.size() == 2);
    CHECK(frames[0].amount == "2 frames");
    CHECK(frames[0].price == 24.5);
    CHECK(frames[0].why == "for Kelp and Dune");
    CHECK(frames[0].title.find("300 × 400 mm") != std::string::npos);
    CHECK(frames[1].amount == "1 frame");
    CHECK(list.items.back().later);
    CHECK(std::ranges::is_sorted(list.items, {}, &Item::later));
}

TEST_CASE("Card, tape, hinges and undermounts are on the list of what is still to be cut") {
    wall::Project project = two_layers(std::nullopt);
    project.tape_price = 0.5;
    const mounts::CardPlan plan = planned(project);
    const List list = list_of(project, &plan);
    CHECK(of_kind(list, Kind::card).size() == 3);  // a sheet for each layer, and the undermount
    CHECK(has_title(list, "undermounts"));
    const auto tape = of_kind(list, Kind::tape);
    REQUIRE(tape.size() == 3);
    // Round the top layer's window at its back, 202.8 x 289.8 mm: the print less twice 5 mm of
    // overlap, larger by a reveal of 4 mm and smaller by a bevel of 1.4 mm on each side.
    CHECK(tape[0].amount == "1 m");
    CHECK(tape[0].price == 0.5);
    CHECK(tape[2].amount == "2 hinges");
    CHECK(of_kind(list, Kind::cutting).empty());
    CHECK(of_kind(list_of(project), Kind::card).empty());
}

TEST_CASE("A mount that no sheet has room for is cut by another, at the price for that") {
    wall::Project project = scenes::wall_of(4000, 2500);
    scenes::add_with_mount(project, "kelp", {1300, 1000}, wall::Mount{}, {{900, 700}});
    project.mount_cut_price = 30;
    const mounts::CardPlan plan = planned(project);
    const auto cutting = of_kind(list_of(project, &plan), Kind::cutting);
    REQUIRE(cutting.size() == 1);
    CHECK(cutting[0].amount == "1 mount");
    CHECK(cutting[0].price == 30.0);
    CHECK(cutting[0].why == "no sheet has room for Kelp");
}

TEST_CASE("What it would cost to have the mounts cut is a remark, and in no total") {
    wall::Project project = two_layers(14.0);
    const mounts::CardPlan plan = planned(project);
    const List list = list_of(project, &plan);
    REQUIRE(list.remarks.size() == 1);
    CHECK(list.remarks[0] ==
          "Having the mount cut by another, in place of cutting, would cost 14.");
    CHECK(list.known_total == 0);
}

TEST_CASE("Alcohol goes with strips, bumpers with hooks, putty with ground that shakes") {
    wall::Project project = with_strips(1);
    CHECK(has_title(list_of(project), "alcohol"));
    CHECK_FALSE(has_title(list_of(project), "Bumpers"));
    CHECK_FALSE(has_title(list_of(project), "Putty"));
    project.pieces[0].fixing = {};
    project.pieces[0].hanger.type = wall::HangerType::sawtooth;
    CHECK_FALSE(has_title(list_of(project), "alcohol"));
    CHECK(has_title(list_of(project), "Bumpers"));
    project.room.shakes = true;
    project.pieces[0].state = wall::PieceState::hung;
    CHECK(has_title(list_of(project), "Putty"));
}

TEST_CASE("The total says how many prices are missing") {
    wall::Project project = with_strips(1);
    const List list = list_of(project);
    REQUIRE(list.without_price == 1);  // the alcohol
    CHECK(list.known_total == *list.items[0].price);
    CHECK(buying::total_words(list) ==
          "Together " + buying::money(list.known_total) + ", plus 1 without a price.");
    project.stock[0].price = 0;
    CHECK(buying::total_words(list_of(project)).starts_with("No price is known."));
}

TEST_CASE("Money has two decimals unless it is whole") {
    CHECK(buying::money(4) == "4");
    CHECK(buying::money(4.5) == "4.50");
    CHECK(buying::money(0.1 + 0.2) == "0.30");
    CHECK(buying::money(2.9999) == "3");
    CHECK(buying::money(1234.56) == "1234.56");
}
