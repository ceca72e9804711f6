#include "desk/bench/card_layout.h"

#include "card_planning.h"
#include "desk/bench/card_snap.h"
#include "mounts/card/plan_words.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;

namespace {

constexpr geometry::Size kPaper{220, 150};

mounts::CardPlan plan() {
    return mounts::plan_card(cards(), few_rounds_of_card(), [] { return true; });
}

/// A sheet of 1000 x 800 mm with a margin of 10 and one blank of 300 x 400 in its upper left
/// corner; another of 200 x 300 lies beside it.
mounts::CardLot two_blanks() {
    mounts::CardLot lot;
    lot.task.blanks = {{"a", {300, 400}}, {"b", {200, 300}}};
    lot.task.sheets = {{"s", {1000, 800}, 1}};
    lot.task.sheets[0].margin = 10;
    lot.plan.sheets = {{0, {{0, {10, 10, {300, 400}}}, {1, {310, 10, {200, 300}}}}, {}, {}}};
    return lot;
}

}  // namespace

TEST_CASE("Sheets lie beside each other at their own size, card by card under a heading") {
    const mounts::CardPlan made = plan();
    const CardLayout layout = lay_out_card(made, kPaper);
    REQUIRE(layout.headings.size() == 2);
    REQUIRE(layout.sheets.size() == 2);
    CHECK(is_same_size(layout.sheets[0].place.size(), {1120, 815}));
    CHECK(layout.headings[0].at.y > layout.sheets[0].place.max.y);
    CHECK_FALSE(geometry::overlaps(layout.sheets[0].place, layout.sheets[1].place));
    CHECK(layout.headings[1].at.y > layout.sheets[1].place.max.y);
    CHECK(layout.scale * layout.extent.width() <= kPaper.width + 0.5);
    CHECK(layout.scale * layout.extent.height() <= kPaper.height + 0.5);
    CHECK(layout.find({1, 0}) == &layout.sheets[1]);
    CHECK(layout.find({1, 7}) == nullptr);
}

TEST_CASE("Every blank that is laid lies inside its sheet on the board") {
    const mounts::CardPlan made = plan();
    const CardLayout layout = lay_out_card(made, kPaper);
    const std::vector<LaidBlank> blanks = blanks_of(made, layout);
    CHECK(blanks.size() == 3);
    for (const LaidBlank& blank : blanks) {
        const auto sheet = layout.find(blank.at)->place.grown(1e-6);
        CHECK(sheet.contains(blank.place.min));
        CHECK(sheet.contains(blank.place.max));
        const geometry::Size size = made.lots[blank.at.lot].task.blanks[blank.blank].size;
        CHECK(is_same_size(blank.place.size(), blank.turned ? size.turned() : size));
    }
}

TEST_CASE("The heading says what card it is, in the plan's unit, and how many sheets") {
    mounts::CardPlan made = plan();
    CHECK(card_title(made, 1) == "Card 2: mount board, 1.4 mm, as slate");
    made.lots[0].known_by = "for Warm white";
    CHECK(card_title(made, 0) == "Card 1: mount board, 1.4 mm, for Warm white");
    made.unit = units::LengthUnit::inch;
    CHECK(card_title(made, 1) == "Card 2: mount board, 1/16 in, as slate");
    const CardLayout layout = lay_out_card(made, kPaper);
    CHECK(layout.headings[1].title == card_title(made, 1));
    CHECK(layout.headings[1].words == mounts::sum_words(made.lots[1]));
}

TEST_CASE("A plan without any sheet is an empty board") {
    const CardLayout layout = lay_out_card({}, kPaper);
    CHECK(layout.sheets.empty());
    CHECK(layout.extent.width() > 0);
}

TEST_CASE("A blank in the hand rests at the margin and at edges of others, whichever is nearer") {
    const mounts::CardLot lot = two_blanks();
    const SheetSpot spot = snap_on_sheet(lot, 0, 1, {306, 402, {200, 300}}, 12, 1);
    CHECK(spot.left == 310);
    CHECK(spot.top == 410);
    CHECK(spot.holds_left);
    CHECK(spot.holds_top);
    const SheetSpot corner = snap_on_sheet(lot, 0, 1, {795, 485, {200, 300}}, 12, 1);
    CHECK(corner.left == 790);
    CHECK(corner.top == 490);
}

TEST_CASE("Away from all edges, or where nothing is to snap, it rests on whole steps") {
    const mounts::CardLot lot = two_blanks();
    const SheetSpot spot = snap_on_sheet(lot, 0, 1, {500.4, 150.6, {200, 300}}, 12, 1);
    CHECK(spot.left == 500);
    CHECK(spot.top == 151);
    CHECK_FALSE(spot.holds_left);
    const SheetSpot loose = snap_on_sheet(lot, 0, 1, {312.2, 10, {200, 300}}, -1, 1);
    CHECK(loose.left == 312);
    CHECK_FALSE(loose.holds_top);
}

TEST_CASE("A blank is held inside the sheet less its margin, where it has room there at all") {
    const mounts::NestSheet sheet = two_blanks().task.sheets[0];
    const mounts::OnSheet held = held_inside(sheet, {900, -50, {200, 300}});
    CHECK(held.left == 790);
    CHECK(held.top == 10);
    CHECK(held_inside(sheet, {900, 60, {990, 300}}).left == 900);
}

TEST_CASE("Its own place holds a blank no more than any other spot") {
    const mounts::CardLot lot = two_blanks();
    CHECK_FALSE(snap_on_sheet(lot, 0, 0, {16, 300, {300, 400}}, 5, 1).holds_left);
}
