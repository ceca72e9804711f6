#include "mounts/card/plan_words.h"
#include "mounts/card_scene.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::mounts;
using namespace wallwright::mounts::test;
using units::LengthUnit;
using wall::Project;

namespace {

/// One sheet of 1000 by 800: first 300 off its left, then 400 off the top of that.
CardLot cut_twice() {
    CardLot lot;
    lot.task.blanks = {{"kelp", {300, 400}}};
    lot.owners = {{wall::PieceId{"kelp"}, "Kelp", 1, 3}};
    lot.kept = {false};
    lot.task.sheets = {{"s", {1000, 800}}};
    lot.origins = {{std::nullopt, "full sheet"}};
    const OnSheet whole{0, 0, {1000, 800}};
    const OnSheet strip{0, 0, {300, 800}};
    lot.plan.sheets = {{0,
                        {{0, {0, 0, {300, 400}}, false}},
                        {{1, whole, true, 300}, {2, strip, false, 400}},
                        {{300, 0, {700, 800}}, {0, 400, {300, 400}}}}};
    lot.plan.count = 1;
    lot.plan.waste = 0.85;
    lot.plan.bound = 1;
    lot.plan.proved = true;
    return lot;
}

}  // namespace

TEST_CASE("Each cut is told by the piece in hand, the edge and how far, and what is done by it") {
    const CardLot lot = cut_twice();
    const auto sentences = cut_sentences(lot, lot.plan.sheets.front(), {});
    REQUIRE(sentences.size() == 2);
    CHECK(sentences[0] ==
          "In hand the piece of 1000 × 800 mm: cut upright, from its upper to its "
          "lower edge, 300 mm from its left edge.");
    CHECK(sentences[1] ==
          "In hand the piece of 300 × 800 mm: cut across, from its left to its right edge, 400 mm "
          "from its upper edge. Kelp, layer 2 of 3 is done.");
    CHECK(left_words(lot.plan.sheets.front(), {}) == "Left over: 700 × 800 mm and 300 × 400 mm.");
}

TEST_CASE("A cut is measured from the piece in hand, not from the sheet it comes from") {
    CardLot lot = cut_twice();
    lot.plan.sheets.front().cuts[1].piece = {200, 100, {300, 700}};
    CHECK(cut_sentences(lot, lot.plan.sheets.front(), {LengthUnit::cm})[1].find(
              "30 cm from its upper edge") != std::string::npos);
}

TEST_CASE("A drop-out says how large it falls, and what is trimmed off it first") {
    CardLot lot = cut_twice();
    CHECK(trim_words(lot, 0, {}).empty());
    lot.windows = {{0, {1.4, 1.4, {277.2, 364.2}}, true, {280, 367}}};
    lot.origins = {{std::nullopt, "drop-out of Chart", true, false, 0, {280, 367}}};
    lot.task.sheets[0].size = {277, 364};
    CHECK(trim_words(lot, 0, {}) ==
          "It falls out 280 × 367 mm at its face. Trim its bevelled edges square first, to 277 × "
          "364 mm, as much at each edge as at the one across from it.");
    lot.windows[0].bevelled = false;
    CHECK(trim_words(lot, 0, {LengthUnit::mm, "x"}).find("Trim it first, to 277 x 364 mm") !=
          std::string::npos);
    lot.origins[0].untrimmed = {277, 364};
    CHECK(trim_words(lot, 0, {}).empty());
}

TEST_CASE("A sheet that is larger than the rule has it is trimmed first, or by its margin") {
    CardLot lot = cut_twice();
    lot.origins[0].untrimmed = {1000.3, 800};
    CHECK(trim_words(lot, 0, {}) ==
          "It is a little larger: trim it first to 1000 × 800 mm, at its right and lower edge.");
    lot.task.sheets[0].margin = 5;
    CHECK(trim_words(lot, 0, {}).empty());
}

TEST_CASE("Before the first cut sheets are measured and a square corner is found") {
    const std::vector<std::string> mm = steps_before(LengthUnit::mm);
    REQUIRE(mm.size() == 3);
    CHECK(mm[1].find("300 mm along one edge and 400 mm along the other are 500 mm apart") !=
          std::string::npos);
    CHECK(steps_before(LengthUnit::inch)[1].find("12 in along one edge and 16 in along the other "
                                                 "are 20 in apart") != std::string::npos);
}

TEST_CASE(
    "How many sheets it takes stands with what of them becomes no blank and what is left out") {
    CardLot lot = cut_twice();
    CHECK(sum_words(lot) == "1 sheet; 85.0 % of it becomes no blank.");
    lot.plan.count = 3;
    lot.plan.left_out = {0};
    CHECK(sum_words(lot) == "3 sheets; 85.0 % of them become no blank; 1 blank is left out.");
    CHECK(left_out_sentences(lot, {}) ==
          std::vector<std::string>{"No sheet has room for Kelp, layer 2 of 3, 300 × 400 mm."});
    lot.plan.count = 0;
    CHECK(lot_words(lot) == "Nothing of it can be cut.");
}

TEST_CASE("That no plan takes fewer is said only where it is proved, else what is known") {
    CardLot lot = cut_twice();
    CHECK(bound_words(lot) == "No plan from these sheets takes fewer: that is proved.");
    CHECK(lot_words(lot) ==
          "1 sheet; 85.0 % of it becomes no blank. No plan from these sheets takes fewer: that is "
          "proved.");
    lot.plan.proved = false;
    CHECK(bound_words(lot).empty());
    lot.plan.count = 3;
    CHECK(bound_words(lot) == "At least 1 sheet is needed; whether 2 would do is not proved.");
    lot.plan.bound = 2;
    CHECK(bound_words(lot) == "At least 2 sheets are needed; whether 2 would do is not proved.");
    lot.plan.bound = 0;
    CHECK(bound_words(lot).empty());
}

TEST_CASE("Where blanks are kept, what is known of fewer sheets holds only while they stay") {
    CardLot lot = cut_twice();
    lot.kept = {true};
    CHECK(bound_words(lot) ==
          "While the kept blanks stay where they are, no plan from these sheets takes fewer: that "
          "is proved.");
    lot.plan.proved = false;
    lot.plan.count = 3;
    lot.plan.bound = 2;
    CHECK(
        bound_words(lot) ==
        "While the kept blanks stay where they are, at least 2 sheets are needed; whether 2 would "
        "do is not proved.");
}

TEST_CASE("Two small blanks kept on two sheets are no proof that one sheet would not do") {
    Project project = scenes::wall_of(4000, 2500);
    add_mounted(project, "kelp", {300, 400});
    add_mounted(project, "dune", {300, 400});
    add_sheet(project, "cream", {1120, 815}, 2);
    const auto words = [&project] { return lot_words(planned(project).lots.at(0)); };
    CHECK(words().starts_with("1 sheet; "));
    CHECK(words().ends_with(" No plan from these sheets takes fewer: that is proved."));
    for (const char* id : {"kelp", "dune"}) {
        wall::KeptBlank kept;
        kept.piece = {id};
        kept.layer = 1;
        kept.sheet = {"cream"};
        kept.number = static_cast<int>(project.kept_blanks.size()) + 1;
        project.kept_blanks.push_back(kept);
    }
    CHECK(words().starts_with("2 sheets; "));
    CHECK(
        words().find(" While the kept blanks stay where they are, no plan from these sheets takes "
                     "fewer: that is proved.") != std::string::npos);
}

TEST_CASE("A sheet is told with where it comes from and how its grain lies") {
    CardLot lot = cut_twice();
    CHECK(where_from(lot, 0).empty());
    CHECK(sheet_remark(lot, 0).empty());
    lot.origins[0].id = wall::CardSheetId{"s"};
    CHECK(where_from(lot, 0) == "at hand");
    lot.task.sheets[0].has_grain = true;
    CHECK(sheet_remark(lot, 0) == ", its grain upright");
    lot.origins[0].turned = true;
    CHECK(sheet_remark(lot, 0) == ", laid a quarter turn so that its grain runs upright");
    lot.task.sheets[0].to_buy = true;
    CHECK(where_from(lot, 0) == "to buy");
    lot.origins[0] = {std::nullopt, "drop-out of Kelp", true};
    CHECK(where_from(lot, 0) == "drops out");
    CHECK(sheet_remark(lot, 0) == ", once that window is cut");
}

TEST_CASE("A blank is named by its piece, and by its layer where the mount has several") {
    CHECK(blank_name({wall::PieceId{"kelp"}, "Kelp", 0, 1}) == "Kelp");
    CHECK(blank_name({wall::PieceId{"kelp"}, "Kelp", 1, 3}) == "Kelp, layer 2 of 3");
}

TEST_CASE("The cost of card stands beside that of having the mounts cut") {
    CardCost cost;
    cost.mounts = 4;
    CHECK(cost_sentences(cost) ==
          std::vector<std::string>{"All comes from card at hand; nothing is to be bought."});
    cost.bought = 2;
    cost.without_price = 2;
    CHECK(cost_sentences(cost).front() == "2 sheets to buy; no price was said.");
    cost.without_price = 0;
    cost.to_buy = 25;
    cost.cut_for_you = 96;
    const auto sentences = cost_sentences(cost);
    REQUIRE(sentences.size() == 2);
    CHECK(sentences[0] == "2 sheets to buy for 25.00.");
    CHECK(sentences[1] == "Having all 4 mounts cut would cost 96.00.");
}
