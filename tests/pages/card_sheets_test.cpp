#include "pages/card_words.h"
#include "pages/looking.h"
#include "pages/sheet_card.h"
#include "support/mount_scenes.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::pages;
using units::LengthUnit;

namespace {

mounts::CardPlan plan_of(const wall::Project& project) {
    auto plan = card_plan_for_sheets(project, [] { return true; });
    REQUIRE(plan);
    return *plan;
}

/// Words of all sheets, lines joined, so that broken sentences are found.
std::string running_text(const std::vector<draw::PageDrawing>& sheets) {
    std::string words;
    for (const draw::PageDrawing& sheet : sheets)
        words += test::words_in(sheet.shapes);
    std::replace(words.begin(), words.end(), '\n', ' ');
    return words;
}

/// One sheet of 1000 by 800: first 300 off its left, then 400 off the top of that.
mounts::CardLot cut_twice() {
    mounts::CardLot lot;
    lot.task.blanks = {{"kelp", {300, 400}}};
    lot.owners = {{wall::PieceId{"kelp"}, "Kelp", 1, 3}};
    lot.kept = {false};
    lot.task.sheets = {{"s", {1000, 800}}};
    lot.origins = {{std::nullopt, "full sheet"}};
    const mounts::OnSheet whole{0, 0, {1000, 800}};
    const mounts::OnSheet strip{0, 0, {300, 800}};
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
    const mounts::CardLot lot = cut_twice();
    const auto sentences = cut_sentences(lot, lot.plan.sheets.front(), LengthUnit::mm);
    REQUIRE(sentences.size() == 2);
    CHECK(sentences[0] ==
          "In hand the piece of 1000 × 800 mm: cut upright, from its upper to its "
          "lower edge, 300 mm from its left edge.");
    CHECK(sentences[1] ==
          "In hand the piece of 300 × 800 mm: cut across, from its left to its right edge, 400 mm "
          "from its upper edge. Kelp, layer 2 of 3 is done.");
    CHECK(left_words(lot.plan.sheets.front(), LengthUnit::mm) ==
          "Left over: 700 × 800 mm and 300 × 400 mm.");
}

TEST_CASE("A cut is measured from the piece in hand, not from the sheet it comes from") {
    mounts::CardLot lot = cut_twice();
    lot.plan.sheets.front().cuts[1].piece = {200, 100, {300, 700}};
    CHECK(cut_sentences(lot, lot.plan.sheets.front(), LengthUnit::cm)[1].find(
              "30 cm from its upper edge") != std::string::npos);
}

TEST_CASE("Whether fewer sheets would do is said only where it is proved") {
    mounts::CardLot lot = cut_twice();
    CHECK(lot_words(lot) ==
          "1 sheet, of which 85 % become no mount. No plan of straight cuts "
          "takes fewer: that is proved.");
    lot.plan.proved = false;
    lot.plan.count = 3;
    lot.plan.bound = 2;
    CHECK(lot_words(lot) ==
          "3 sheets, of which 85 % become no mount. At least 2 sheets are "
          "needed; whether 2 would do is not proved.");
}

TEST_CASE("The cost of card stands beside that of having the mounts cut") {
    mounts::CardCost cost;
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

TEST_CASE("The card plan has every sheet, every cut with a box, and what is left") {
    const wall::Project project = scenes::mounts_to_cut();
    const mounts::CardPlan plan = plan_of(project);
    const auto sheets = card_plan_sheets(project, plan, Paper::a4);
    const std::string words = running_text(sheets);
    int number = 0;
    for (const mounts::CardLot& lot : plan.lots) {
        CHECK(words.find(lot_words(lot)) != std::string::npos);
        for (const mounts::CutSheet& sheet : lot.plan.sheets) {
            CHECK(words.find(fmt::format("Sheet {}: ", ++number)) != std::string::npos);
            CHECK(words.find(left_words(sheet, project.unit)) != std::string::npos);
            for (const std::string& sentence : cut_sentences(lot, sheet, project.unit))
                CHECK(words.find(sentence) != std::string::npos);
        }
    }
    CHECK(number > 0);
}

TEST_CASE("The same wall gives the same card plan, and one without mounts to cut none") {
    wall::Project project = scenes::mounts_to_cut();
    CHECK(running_text(card_plan_sheets(project, plan_of(project), Paper::a4)) ==
          running_text(card_plan_sheets(project, plan_of(project), Paper::a4)));
    for (wall::Piece& piece : project.pieces)
        piece.state = wall::PieceState::hung;
    CHECK_FALSE(card_plan_for_sheets(project, [] { return true; }));
}

TEST_CASE("Nothing on the card plan runs into anything else or off the paper") {
    for (const Paper paper : {Paper::a4, Paper::letter, Paper::a3})
        for (const LengthUnit unit : {LengthUnit::mm, LengthUnit::inch}) {
            wall::Project project = scenes::mounts_to_cut();
            project.unit = unit;
            for (const draw::PageDrawing& sheet :
                 card_plan_sheets(project, plan_of(project), paper)) {
                CHECK(test::collisions(sheet.shapes) == std::vector<std::string>{});
                CHECK(test::outside(sheet.shapes, sheet.extent.grown(-kMargin + 0.5)) ==
                      std::vector<std::string>{});
            }
        }
}
