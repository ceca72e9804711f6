#include "mounts/card/plan_words.h"
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

}  // namespace

TEST_CASE("The card plan has every sheet, every cut with a box, and what is left") {
    const wall::Project project = scenes::mounts_to_cut();
    const mounts::CardPlan plan = plan_of(project);
    const auto sheets = card_plan_sheets(project, plan, Paper::a4);
    const std::string words = running_text(sheets);
    for (const std::string& step : mounts::steps_before(project.unit))
        CHECK(words.find(step) != std::string::npos);
    int number = 0;
    int trimmed = 0;
    for (const mounts::CardLot& lot : plan.lots) {
        CHECK(words.find(mounts::lot_words(lot)) != std::string::npos);
        for (const mounts::CutSheet& sheet : lot.plan.sheets) {
            CHECK(words.find(fmt::format("Sheet {}: ", ++number)) != std::string::npos);
            const std::string trimming = mounts::trim_words(lot, sheet.sheet, {project.unit});
            CHECK(words.find(trimming) != std::string::npos);
            trimmed += trimming.empty() ? 0 : 1;
            if (lot.origins[sheet.sheet].drop_out)
                CHECK(words.find(fmt::format("{}, once that window is cut",
                                             lot.origins[sheet.sheet].title)) != std::string::npos);
            CHECK(words.find(mounts::left_words(sheet, {project.unit})) != std::string::npos);
            for (const std::string& sentence : mounts::cut_sentences(lot, sheet, {project.unit}))
                CHECK(words.find(sentence) != std::string::npos);
        }
    }
    CHECK(number > 0);
    CHECK(trimmed > 0);
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
