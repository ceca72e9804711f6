#include "mounts/card/card_plan.h"

#include "mounts/card_scene.h"
#include "mounts/nest_replay.h"
#include "wall/find_in.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::mounts;
using namespace wallwright::mounts::test;
using tests::replay;
using wall::Project;

namespace {

/// Three single cream mounts and one double, its under-layer dark; two sheets of cream, one of
/// dark.
Project small_wall() {
    Project project = scenes::wall_of(4000, 2500);
    add_mounted(project, "kelp", {400, 500});
    add_mounted(project, "dune", {400, 300});
    add_mounted(project, "tide", {300, 300}).under.resize(1);
    project.mounts[2].under[0].colour = kDark;
    add_mounted(project, "reed", {180, 240});
    add_sheet(project, "cream", {1120, 815}, 2);
    add_sheet(project, "dark", {815, 560}).colour = kDark;
    return project;
}

std::vector<std::string> blanks_of(const CardLot& lot) {
    std::vector<std::string> ids;
    for (const NestBlank& blank : lot.task.blanks)
        ids.push_back(blank.id);
    return ids;
}

std::size_t sheets_of_kind(const CardLot& lot, const std::string& id) {
    return static_cast<std::size_t>(std::count_if(
        lot.plan.sheets.begin(), lot.plan.sheets.end(),
        [&](const CutSheet& sheet) { return lot.task.sheets[sheet.sheet].id == id; }));
}

void check_replay(const CardPlan& plan) {
    for (const CardLot& lot : plan.lots)
        CHECK(replay(lot.task, lot.plan) == "");
}

using Notes = std::vector<std::string>;

}  // namespace

TEST_CASE("Blanks of one card go together, one for each layer of each mount") {
    const CardPlan plan = planned(small_wall());
    REQUIRE(plan.lots.size() == 2);
    CHECK(blanks_of(plan.lots[0]) == Notes{"kelp/1", "dune/1", "tide/1", "reed/1"});
    CHECK(blanks_of(plan.lots[1]) == Notes{"tide/2"});
    CHECK(plan.lots[0].owners[2] == BlankOwner{{"tide"}, "Tide", 0, 2});
    CHECK(card_name(plan.lots[1], units::LengthUnit::mm) == "mount board, 1.4 mm, as dark");
    CHECK(card_name(plan.lots[1], units::LengthUnit::cm) == "mount board, 1.4 mm, as dark");
    CHECK(plan.notes.empty());
    check_replay(plan);
    CHECK(plan.lots[0].plan.proved);
    CHECK(plan.lots[0].plan.count == 1);
    CHECK(plan.cost.mounts == 4);
    CHECK(plan.cost.bought == 0);
}

TEST_CASE("Boards of another thickness are another card") {
    Project project = small_wall();
    project.mounts[1].card.thickness = 2.2;
    CHECK(planned(project).lots.size() == 3);
}

TEST_CASE("What hangs and what is not bought yet needs no mount, unless it is asked for") {
    Project project = small_wall();
    project.pieces[0].state = wall::PieceState::hung;
    project.pieces[0].at = geometry::Point<geometry::Wall>{100, 100};
    project.pieces[1].wished = true;
    CHECK(blanks_of(planned(project).lots[0]) == Notes{"tide/1", "reed/1"});
    CardOptions options;
    options.rounds = 5;
    options.only = {{"kelp"}, {"dune"}};
    const CardPlan plan = plan_card(project, options, [] { return true; });
    REQUIRE(plan.lots.size() == 1);
    CHECK(blanks_of(plan.lots[0]) == Notes{"kelp/1", "dune/1"});
}

TEST_CASE("A mount that cannot be cut is left out and the note says why") {
    Project project = small_wall();
    project.pieces[0].print.reset();
    project.mounts[1].overlap = project.mounts[1].overlap_most = 150;
    const CardPlan plan = planned(project);
    CHECK(blanks_of(plan.lots[0]) == Notes{"tide/1", "reed/1"});
    REQUIRE(plan.notes.size() == 2);
    CHECK(
        plan.notes[0] ==
        "The mount of Kelp is left out. A window of it has no print; put one in, so that its size "
        "is known.");
    CHECK(plan.notes[1].starts_with("The mount of Dune is left out. "));
    CHECK(plan.cost.mounts == 2);
}

TEST_CASE("A piece that is asked for and has no mount is told") {
    Project project = small_wall();
    project.pieces[0].mount.reset();
    CardOptions options;
    options.rounds = 1;
    options.only = {{"kelp"}};
    const CardPlan plan = plan_card(project, options, [] { return true; });
    CHECK(plan.lots.empty());
    CHECK(plan.notes == Notes{"Kelp has no mount to cut."});
}

TEST_CASE("Sheets at hand are used before any is bought, and then the plan is about these") {
    Project project = small_wall();
    project.card[0].size = {500, 410};
    project.card[0].count = 3;
    add_sheet(project, "jumbo", {1630, 1120}).to_buy = true;
    project.card.back().price = 12.5;
    const CardPlan enough = planned(project);
    check_replay(enough);
    CHECK(enough.cost.bought == 0);
    CHECK(sheets_of_kind(enough.lots[0], "cream") == enough.lots[0].plan.count);
    CHECK(enough.lots[0].plan.proved);
    project.card[0].count = 1;
    const CardPlan too_few = planned(project);
    check_replay(too_few);
    CHECK(sheets_of_kind(too_few.lots[0], "jumbo") == 1);
    CHECK(too_few.cost.bought == 1);
    CHECK(too_few.cost.to_buy == 12.5);
    CHECK(too_few.cost.without_price == 0);
    CHECK(too_few.lots[0].plan.left_out.empty());
}

TEST_CASE("A card that no sheet names goes by the mount that asks for it, else by its colour") {
    Project project = small_wall();
    project.card.clear();
    wall::find_in(project.mounts, wall::MountId{"kelp"})->title = "Warm white";
    const CardPlan plan = planned(project);
    CHECK(card_name(plan.lots[0], units::LengthUnit::mm) == "mount board, 1.4 mm, for Warm white");
    CHECK(card_name(plan.lots[1], units::LengthUnit::mm) == "mount board, 1.4 mm, #2b2b2e");
}

TEST_CASE("A card goes by a sheet that the plan takes, and by a full one rather than an offcut") {
    Project project = scenes::wall_of(4000, 2500);
    add_mounted(project, "kelp", {400, 500}).floats = true;
    add_sheet(project, "rest", {300, 300}).title = "Slate offcut";
    project.card.back().offcut = true;
    add_sheet(project, "shop", {1120, 815}).title = "Slate, shop";
    CHECK(planned(project).lots[0].known_by == "as Slate, shop");
    // Of two that are not taken, the full one.
    project.card[1].size = {350, 350};
    CHECK(planned(project).lots[0].known_by == "as Slate, shop");
    project.card[0].size = {400, 500};
    CHECK(planned(project).lots[0].known_by == "as Slate offcut");
    project.card[0].title = "Slate, 500 x 400 mm";
    CHECK(planned(project).lots[0].known_by == "as Slate");
}

TEST_CASE("Sheets are cut from as large as the rule has them, in the unit of the project") {
    Project project = scenes::wall_of(4000, 2500);
    add_mounted(project, "kelp", {400, 500}).floats = true;
    add_sheet(project, "cream", {1120.3, 815});
    project.card.back().margin = 7.2;
    const CardPlan plan = planned(project);
    CHECK(plan.lots[0].task.sheets[0].size == geometry::Size{1120, 815});
    CHECK(plan.lots[0].task.sheets[0].margin == 7.5);
    CHECK(plan.lots[0].origins[0].untrimmed == geometry::Size{1120.3, 815});
    project.unit = units::LengthUnit::inch;
    const CardPlan inches = planned(project);
    const NestSheet& sheet = inches.lots[0].task.sheets[0];
    CHECK(sheet.size.width == Approx(25.4 * (44 + 1.0 / 16)));
    CHECK(sheet.size.height == Approx(25.4 * (32 + 1.0 / 16)));
    CHECK(sheet.margin == Approx(25.4 * 5 / 16));
    // A file keeps hundredths of a mm, so a sheet of 31 15/16 in is a little short in it.
    project.card.back().size = {811.21, 811.21};
    CHECK(planned(project).lots[0].task.sheets[0].size.width == Approx(25.4 * (31 + 15.0 / 16)));
}

TEST_CASE("Without any sheet a full one is assumed, and said to be") {
    Project project = small_wall();
    project.card.clear();
    const CardPlan plan = planned(project);
    check_replay(plan);
    REQUIRE(plan.lots[0].origins.size() >= 1);
    CHECK(plan.lots[0].origins[0].title == "full sheet, 1120 x 815 mm");
    CHECK_FALSE(plan.lots[0].origins[0].id);
    REQUIRE(plan.notes.size() == 2);
    CHECK(
        plan.notes[0] ==
        "No sheet of mount board, 1.4 mm, #faf7f0 is in the drawer; a full sheet of 1120 x 815 mm "
        "is assumed. Put the sheets you have into the project's card.");
    CHECK(plan.cost.bought == 2);
    CHECK(plan.cost.without_price == 2);
    project.unit = units::LengthUnit::inch;
    CHECK(planned(project).lots[0].origins[0].title == "full sheet, 40 x 32 in");
}

TEST_CASE("Where the sheets at hand do not suffice and none is known to buy, full ones help out") {
    Project project = small_wall();
    project.card[0].size = {420, 520};
    project.card[0].count = 1;
    const CardPlan plan = planned(project);
    check_replay(plan);
    CHECK(plan.lots[0].plan.left_out.empty());
    CHECK(plan.cost.bought == 1);
    REQUIRE(plan.notes.size() == 1);
    CHECK(plan.notes[0].starts_with(
        "The sheets of mount board, 1.4 mm, as cream in the drawer do not suffice"));
}

TEST_CASE("A blank that no sheet holds is left out, and its mount is not counted") {
    Project project = small_wall();
    add_mounted(project, "whale", {1300, 900});
    const CardPlan plan = planned(project);
    check_replay(plan);
    CHECK_FALSE(found(plan, "whale"));
    CHECK(plan.cost.mounts == 4);
    CHECK(
        plan.notes.back() ==
        "No sheet of mount board, 1.4 mm, as cream holds the blank of Whale, 1300 x 900 mm. Put a "
        "larger sheet, at hand or to buy, into the project's card.");
}

TEST_CASE("A mount of which one board is left out takes no card for its others") {
    Project project = small_wall();
    add_mounted(project, "whale", {1300, 900});
    project.mounts.back().under.push_back({4, project.mounts.back().card, kDark});
    add_sheet(project, "jumbo", {1600, 1100});
    const CardPlan plan = planned(project);
    check_replay(plan);
    CHECK_FALSE(found(plan, "whale"));
    CHECK(sheets_of_kind(plan.lots[0], "jumbo") == 0);
    CHECK(plan.notes.back().find("holds the blank of Whale, layer 2 of 2") != std::string::npos);
    const AfterCutting after = after_cutting(plan);
    CHECK(std::ranges::find(after.cut, wall::PieceId{"whale"}) == after.cut.end());
    CHECK(after.cut.size() == 4);
}

TEST_CASE("A sheet on which a blank of another mount is kept is held back for it") {
    Project project = small_wall();
    project.card[0].count = 2;
    project.kept_blanks.push_back({{"dune"}, 1, project.card[0].id, 2});
    CardOptions options;
    options.rounds = 5;
    options.only = {{"kelp"}};
    const CardPlan plan = plan_card(project, options, [] { return true; });
    check_replay(plan);
    REQUIRE(plan.lots.size() == 1);
    CHECK(plan.lots[0].task.sheets[0].count == 1);
    project.kept_blanks[0].piece = {"kelp"};
    CHECK(plan_card(project, options, [] { return true; }).lots[0].task.sheets[0].count == 2);
}

TEST_CASE("What drops out of a window gives a smaller blank of the same card") {
    Project project = scenes::wall_of(4000, 2500);
    add_mounted(project, "kelp", {600, 800});
    add_mounted(project, "reed", {180, 240});
    add_sheet(project, "cream", {600, 800});
    const CardPlan plan = planned(project);
    check_replay(plan);
    const CardLot& lot = plan.lots.at(0);
    REQUIRE(found(plan, "reed"));
    const SheetOrigin& origin = lot.origins[lot.plan.sheets[found(plan, "reed")->sheet].sheet];
    CHECK(origin.drop_out);
    CHECK(origin.title == "drop-out of Kelp");
    // At the back: the print of 360 x 480 less 5 mm of overlap on each side, and the bevel of
    // 1.4 mm.
    const geometry::Size size = lot.windows.at(*origin.window).place.size;
    CHECK(size.width == Approx(360 - 10 - 2.8));
    CHECK(size.height == Approx(480 - 10 - 2.8));
    CHECK(origin.untrimmed.width == Approx(350));
    CHECK(origin.untrimmed.height == Approx(470));
    // What is cut from is on the rule.
    CHECK(lot.task.sheets[lot.plan.sheets[found(plan, "reed")->sheet].sheet].size ==
          geometry::Size{347, 467});
    CHECK(lot.windows.at(*origin.window).bevelled);
    CHECK(plan.cost.bought == 0);
    CHECK(lot.plan.proved);
}

TEST_CASE("A drop-out of another card, or one too small, is not offered") {
    Project project = scenes::wall_of(4000, 2500);
    add_mounted(project, "kelp", {600, 800}).colour = kDark;
    add_mounted(project, "reed", {180, 240});
    const CardPlan plan = planned(project);
    for (const CardLot& lot : plan.lots)
        for (const SheetOrigin& origin : lot.origins)
            CHECK_FALSE(origin.drop_out);
    CHECK(plan.lots[0].windows.size() == 1);
}

TEST_CASE("Where one sheet has a grain no blank is turned, and it runs upright in every mount") {
    Project project = scenes::wall_of(4000, 2500);
    for (const char* id : {"kelp", "dune", "tide"})
        add_mounted(project, id, {300, 700});
    add_sheet(project, "laid", {715, 950}).grain = wall::Grain::across;
    const CardPlan plan = planned(project);
    check_replay(plan);
    const CardLot& lot = plan.lots.at(0);
    CHECK(lot.plan.left_out.empty());
    CHECK(plan.cost.bought == 0);
    CHECK(lot.task.sheets.at(0).size == geometry::Size{950, 715});
    CHECK(lot.task.sheets.at(0).has_grain);
    CHECK(lot.origins.at(0).turned);
    for (const CutSheet& sheet : lot.plan.sheets)
        for (const PlacedBlank& placed : sheet.placed)
            CHECK_FALSE(placed.turned);
    project.card[0].grain = wall::Grain::upright;
    CHECK(planned(project).cost.bought > 0);
}

TEST_CASE("The cost beside the price of having each mount cut") {
    Project project = small_wall();
    CHECK_FALSE(planned(project).cost.cut_for_you);
    project.mount_cut_price = 14;
    CHECK(planned(project).cost.cut_for_you == 56);
}

TEST_CASE("With rounds the plan is the same on each run") {
    const Project project = small_wall();
    const CardPlan one = planned(project, 10);
    const CardPlan other = planned(project, 10);
    REQUIRE(one.lots.size() == other.lots.size());
    for (std::size_t i = 0; i < one.lots.size(); ++i)
        CHECK(one.lots[i].plan == other.lots[i].plan);
}

TEST_CASE("Planning that is stopped at once still gives a plan") {
    const CardPlan plan = plan_card(small_wall(), {}, [] { return false; });
    check_replay(plan);
    CHECK(plan.cost.mounts == 4);
}

TEST_CASE("A wall without mounts has nothing to cut") {
    const CardPlan plan = planned(scenes::wall_of(4000, 2500));
    CHECK(plan.lots.empty());
    CHECK(plan.cost == CardCost{});
}
