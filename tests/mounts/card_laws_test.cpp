// What holds for the card plan of any wall, and what is left after it is cut.
#include "mounts/card/on_rule.h"
#include "mounts/card_scene.h"
#include "mounts/nest_replay.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>

using namespace wallwright;
using namespace wallwright::mounts;
using namespace wallwright::mounts::test;
using tests::replay;
using wall::Project;

namespace {

/// As nobody cuts it, but a table of sheets has it.
double any_mm(int low, int high) {
    return *rc::gen::inRange(10 * low, 10 * high) / 10.0;
}

wall::Colour some_colour() {
    return *rc::gen::element(kCream, kDark);
}

void add_any_sheet(Project& project, const std::string& id) {
    wall::CardSheet& sheet =
        add_sheet(project, id, {any_mm(250, 1600), any_mm(250, 1200)}, *rc::gen::inRange(0, 4));
    sheet.colour = some_colour();
    sheet.to_buy = *rc::gen::inRange(0, 3) == 0;
    sheet.price = *rc::gen::element(0.0, 7.5, 12.0);
    sheet.margin = *rc::gen::element(0.0, 0.0, 8.3);
    if (*rc::gen::inRange(0, 4) == 0)
        sheet.grain = *rc::gen::element(wall::Grain::across, wall::Grain::upright);
}

Project any_wall() {
    Project project = scenes::wall_of(6000, 2500);
    project.unit =
        *rc::gen::element(units::LengthUnit::mm, units::LengthUnit::cm, units::LengthUnit::inch);
    const int mounts = *rc::gen::inRange(1, 9);
    for (int i = 0; i < mounts; ++i) {
        wall::Mount& mount =
            add_mounted(project, fmt::format("p{}", i), {any_mm(140, 700), any_mm(140, 700)});
        mount.colour = some_colour();
        mount.edge = *rc::gen::element(wall::WindowEdge::bevel, wall::WindowEdge::straight);
        mount.under.resize(*rc::gen::inRange<std::size_t>(0, 3));
        for (wall::UnderLayer& under : mount.under)
            under.colour = some_colour();
    }
    const int sheets = *rc::gen::inRange(0, 5);
    for (int i = 0; i < sheets; ++i)
        add_any_sheet(project, fmt::format("s{}", i));
    project.mount_cut_price = 11;
    return project;
}

/// Some blanks of the plan are kept: where they lie, or anywhere.
void keep_some(Project& project, const CardPlan& plan) {
    for (const CardLot& lot : plan.lots)
        for (const CutSheet& sheet : lot.plan.sheets)
            for (const PlacedBlank& placed : sheet.placed) {
                const SheetOrigin& origin = lot.origins[sheet.sheet];
                const int how = *rc::gen::inRange(0, 4);
                if (!origin.id || how == 0)
                    continue;
                const BlankOwner& owner = lot.owners[placed.blank];
                wall::KeptBlank kept =
                    kept_at(owner.piece.text, origin.id->text, placed.place.left, placed.place.top);
                kept.layer = static_cast<int>(owner.layer) + 1;
                kept.turned = placed.turned;
                kept.number = *rc::gen::inRange(1, 3);
                if (how == 1)
                    kept.left = any_mm(0, 600);
                project.kept_blanks.push_back(kept);
            }
}

void check_plan(const CardPlan& plan) {
    double price = 0;
    std::size_t bought = 0;
    for (const CardLot& lot : plan.lots) {
        RC_ASSERT(replay(lot.task, lot.plan) == "");
        RC_ASSERT(lot.owners.size() == lot.task.blanks.size());
        RC_ASSERT(lot.kept.size() == lot.task.blanks.size());
        RC_ASSERT(lot.origins.size() == lot.task.sheets.size());
        if (lot.plan.proved)
            RC_ASSERT(lot.plan.count == lot.plan.bound);
        for (const CutSheet& sheet : lot.plan.sheets) {
            bought += lot.task.sheets[sheet.sheet].to_buy ? 1 : 0;
            price += lot.task.sheets[sheet.sheet].to_buy ? lot.task.sheets[sheet.sheet].price : 0;
        }
    }
    RC_ASSERT(plan.cost.bought == bought);
    RC_ASSERT(plan.cost.to_buy == price);
    RC_ASSERT(plan.cost.cut_for_you == 11.0 * static_cast<double>(plan.cost.mounts));
}

void check_grain(const Project& project, const CardPlan& plan) {
    for (const CardLot& lot : plan.lots) {
        const bool has_grain =
            std::any_of(project.card.begin(), project.card.end(), [&lot](const auto& sheet) {
                return sheet.colour == lot.colour && sheet.grain != wall::Grain::none;
            });
        for (const CutSheet& sheet : lot.plan.sheets)
            for (const PlacedBlank& placed : sheet.placed)
                RC_ASSERT(!has_grain || !placed.turned);
    }
}

/// A figure as it is shown, read back: tenths of a mm, or sixteenths of an inch.
long shown(double mm, units::LengthUnit unit) {
    const auto read = units::parse_length(units::format_number(mm, unit), unit);
    RC_ASSERT(read.has_value());
    return std::lround(*read / (unit == units::LengthUnit::inch ? units::kMmPerInch / 16 : 0.1));
}

/// Each figure is as exact as it is shown, and those of both parts of a cut are that of the piece.
void check_figures(const CardPlan& plan) {
    const auto is_exact = [unit = plan.unit](double mm) {
        return std::abs(units::rounded(mm, unit) - mm) < 1e-6;
    };
    for (const CardLot& lot : plan.lots)
        for (const CutSheet& sheet : lot.plan.sheets) {
            for (const SheetCut& cut : sheet.cuts) {
                const double from = cut.at - (cut.upright ? cut.piece.left : cut.piece.top);
                const double all = cut.upright ? cut.piece.size.width : cut.piece.size.height;
                RC_ASSERT(is_exact(from));
                RC_ASSERT(is_exact(all));
                RC_ASSERT(shown(from, plan.unit) + shown(all - from, plan.unit) ==
                          shown(all, plan.unit));
            }
            for (const PlacedBlank& placed : sheet.placed) {
                const auto& [left, top, size] = placed.place;
                RC_ASSERT(shown(left, plan.unit) + shown(size.width, plan.unit) ==
                          shown(left + size.width, plan.unit));
                RC_ASSERT(shown(top, plan.unit) + shown(size.height, plan.unit) ==
                          shown(top + size.height, plan.unit));
            }
        }
}

/// Every kept blank lies where it was kept, or is named.
void check_kept(const Project& project, const CardPlan& plan) {
    std::size_t moved = 0;
    for (const wall::KeptBlank& kept : project.kept_blanks) {
        const auto where = found(plan, kept.piece.text, kept.layer);
        if (!where) {  // A board of its mount fits no sheet, so the whole mount is left out.
            RC_ASSERT(
                std::any_of(plan.notes.begin(), plan.notes.end(), [&kept](const std::string& note) {
                    return note.find(fmt::format("the blank of P{}", kept.piece.text.substr(1))) !=
                           std::string::npos;
                }));
            continue;
        }
        if (!plan.lots[where->lot].kept[where->placed.blank]) {
            ++moved;
            continue;
        }
        const CardLot& lot = plan.lots[where->lot];
        RC_ASSERT(where->placed.place.left == down_to_rule(kept.left, project.unit));
        RC_ASSERT(where->placed.place.top == down_to_rule(kept.top, project.unit));
        RC_ASSERT(where->placed.turned == kept.turned);
        RC_ASSERT(lot.origins[lot.plan.sheets[where->sheet].sheet].id == kept.sheet);
    }
    const auto says_so = [](const std::string& note) {
        return note.find("does not stay where it was kept") != std::string::npos;
    };
    RC_ASSERT(static_cast<std::size_t>(
                  std::count_if(plan.notes.begin(), plan.notes.end(), says_so)) == moved);
}

/// At hand before, less what is used: never below none.
void check_after(const Project& project, const CardPlan& plan) {
    const AfterCutting after = after_cutting(plan);
    for (const AfterCutting::Used& used : after.used) {
        const wall::CardSheet* sheet = find(project, used.sheet);
        RC_ASSERT(sheet != nullptr);
        RC_ASSERT(sheet->to_buy || used.count <= sheet->count);
    }
    for (const wall::CardSheet& left : after.left) {
        RC_ASSERT(std::min(left.size.width, left.size.height) > kOffcutLeast - 1e-3);
        RC_ASSERT(left.offcut);
        RC_ASSERT(left.margin == 0);
        RC_ASSERT(left.grain != wall::Grain::across);
    }
}

}  // namespace

TEST_CASE("Any card plan can be cut as it says") {
    rc::prop("laws of the card plan", [] {
        Project project = any_wall();
        const CardPlan plan = planned(project, 3);
        check_plan(plan);
        check_figures(plan);
        check_grain(project, plan);
        check_after(project, plan);
        keep_some(project, plan);
        const CardPlan about = planned(project, 3);
        check_plan(about);
        check_figures(about);
        check_grain(project, about);
        check_kept(project, about);
        check_after(project, about);
    });
}

TEST_CASE("After cutting, sheets are gone and offcuts and drop-outs worth keeping are there") {
    Project project = scenes::wall_of(4000, 2500);
    add_mounted(project, "kelp", {400, 500});
    add_sheet(project, "cream", {1120, 500}, 2).title = "Cream";
    const AfterCutting after = after_cutting(planned(project));
    CHECK(after.used == std::vector<AfterCutting::Used>{{{"cream"}, 1}});
    REQUIRE(after.left.size() == 2);
    CHECK(after.left[0].title == "Cream, 720 x 500 mm");
    CHECK(after.left[0].size == geometry::Size{720, 500});
    CHECK(after.left[0].offcut);
    CHECK(after.left[0].colour == kCream);
    CHECK(after.left[1].title == "drop-out of Kelp, 227.2 x 287.2 mm");
}

TEST_CASE("Narrow strips and small drop-outs are not kept") {
    Project project = scenes::wall_of(4000, 2500);
    add_mounted(project, "kelp", {180, 160});
    add_sheet(project, "cream", {279, 160});
    CHECK(after_cutting(planned(project)).left.empty());
}

TEST_CASE("An offcut of an offcut is called by its new size") {
    Project project = scenes::wall_of(4000, 2500);
    add_mounted(project, "kelp", {400, 500}).floats = true;
    add_sheet(project, "rest", {800, 500}).title = "Cream, 800 x 500 mm";
    project.card[0].offcut = true;
    const AfterCutting after = after_cutting(planned(project));
    REQUIRE(after.left.size() == 1);
    CHECK(after.left[0].title == "Cream, 400 x 500 mm");
}

TEST_CASE("An offcut of a sheet that nobody recorded is just called one") {
    Project project = scenes::wall_of(4000, 2500);
    add_mounted(project, "kelp", {815, 500}).floats = true;
    const AfterCutting after = after_cutting(planned(project));
    CHECK(after.used.empty());
    REQUIRE(after.left.size() == 1);
    CHECK(after.left[0].title == "offcut, 620 x 815 mm");
}

TEST_CASE("Equal offcuts are counted together, and a grain runs upright in them") {
    Project project = scenes::wall_of(4000, 2500);
    for (const char* id : {"kelp", "dune"})
        add_mounted(project, id, {400, 500}).floats = true;
    add_sheet(project, "laid", {500, 700}, 2).grain = wall::Grain::across;
    const AfterCutting after = after_cutting(planned(project));
    CHECK(after.used == std::vector<AfterCutting::Used>{{{"laid"}, 2}});
    REQUIRE(after.left.size() == 1);
    CHECK(after.left[0].count == 2);
    CHECK(after.left[0].size == geometry::Size{300, 500});
    CHECK(after.left[0].grain == wall::Grain::upright);
}
