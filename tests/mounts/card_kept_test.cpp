// Blanks that are kept where a person put them.
#include "mounts/card/cut_about.h"
#include "mounts/card/kept_bound.h"
#include "mounts/card_scene.h"
#include "mounts/nest_replay.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::mounts;
using namespace wallwright::mounts::test;
using tests::replay;
using wall::Project;

namespace {

Project wall_of_three() {
    Project project = scenes::wall_of(4000, 2500);
    add_mounted(project, "kelp", {400, 500});
    add_mounted(project, "dune", {400, 300});
    add_mounted(project, "reed", {200, 300});
    add_sheet(project, "cream", {1120, 815}, 2);
    return project;
}

/// Its only note.
std::string note_of(const CardPlan& plan) {
    REQUIRE(plan.notes.size() == 1);
    return plan.notes[0];
}

OnSheet at(double left, double top, double width, double height) {
    return {left, top, {width, height}};
}

BlankMove move_of(const CardPlan& plan, const std::string& piece, double left, double top) {
    const auto where = found(plan, piece);
    REQUIRE(where);
    return {where->lot, where->sheet, where->placed.blank, left, top, false};
}

std::string problem_of(const Project& project, const CardPlan& plan, const BlankMove& move) {
    const auto kept = kept_there(project, plan, move);
    return kept ? "no problem" : to_text(kept.error());
}

}  // namespace

TEST_CASE("A sheet is cut about one blank so that the largest rest stays whole") {
    const OnSheet kept[] = {at(0, 0, 300, 200)};
    const auto about = cut_about(at(0, 0, 1000, 500), kept);
    REQUIRE(about);
    CHECK(about->cuts.size() == 2);
    REQUIRE(about->free.size() == 2);
    CHECK(about->free[0].size.area() + about->free[1].size.area() == 440000);
    CHECK(std::max(about->free[0].size.area(), about->free[1].size.area()) == 700 * 500);
}

TEST_CASE("A pinwheel of blanks cannot be parted by cuts from edge to edge") {
    const OnSheet pinwheel[] = {at(0, 0, 200, 100), at(200, 0, 100, 200), at(100, 200, 200, 100),
                                at(0, 100, 100, 200)};
    CHECK_FALSE(cut_about(at(0, 0, 300, 300), pinwheel));
    CHECK(cut_about(at(0, 0, 300, 300), std::span(pinwheel).first(3)));
}

TEST_CASE("A blank that fills the sheet needs no cut") {
    const OnSheet kept[] = {at(5, 5, 290, 190)};
    const auto about = cut_about(at(5, 5, 290, 190), kept);
    REQUIRE(about);
    CHECK(about->cuts.empty());
    CHECK(about->free.empty());
}

TEST_CASE("A kept blank lies exactly where it was kept, and all others about it") {
    Project project = wall_of_three();
    project.kept_blanks = {kept_at("kelp", "cream", 120.5, 33.5)};
    const CardPlan plan = planned(project);
    CHECK(plan.notes.empty());
    const CardLot& lot = plan.lots.at(0);
    CHECK(replay(lot.task, lot.plan) == "");
    const auto kelp = found(plan, "kelp");
    REQUIRE(kelp);
    CHECK(kelp->placed.place == at(120.5, 33.5, 400, 500));
    CHECK(lot.kept[kelp->placed.blank]);
    CHECK_FALSE(lot.kept[found(plan, "dune")->placed.blank]);
    CHECK(lot.plan.count == 1);
    CHECK(lot.plan.proved);
}

TEST_CASE("A blank is kept turned") {
    Project project = wall_of_three();
    project.kept_blanks = {kept_at("kelp", "cream", 10, 20)};
    project.kept_blanks[0].turned = true;
    const auto kelp = found(planned(project), "kelp");
    REQUIRE(kelp);
    CHECK(kelp->placed.turned);
    CHECK(kelp->placed.place == at(10, 20, 500, 400));
}

TEST_CASE("Blanks kept on two sheets take both, and this is the least that keeps them") {
    Project project = wall_of_three();
    project.kept_blanks = {kept_at("kelp", "cream", 0, 0), kept_at("dune", "cream", 0, 0)};
    project.kept_blanks[1].number = 2;
    const CardPlan plan = planned(project);
    CHECK(plan.notes.empty());
    CHECK(replay(plan.lots[0].task, plan.lots[0].plan) == "");
    CHECK(plan.lots[0].plan.count == 2);
    CHECK(plan.lots[0].plan.bound == 2);
    CHECK(plan.lots[0].plan.proved);
    CHECK(found(plan, "kelp")->sheet != found(plan, "dune")->sheet);
}

TEST_CASE("A sheet more for a kept blank's sake is proved to be needed as long as it stays") {
    // In the middle it leaves no place for the other one, which would fit beside it.
    Project project = scenes::wall_of(4000, 2500);
    add_mounted(project, "kelp", {400, 500});
    add_mounted(project, "dune", {500, 500});
    add_sheet(project, "cream", {900, 500}, 2);
    project.kept_blanks = {kept_at("kelp", "cream", 250, 0)};
    const CardPlan plan = planned(project);
    CHECK(replay(plan.lots[0].task, plan.lots[0].plan) == "");
    CHECK(plan.lots[0].plan.count == 2);
    CHECK(plan.lots[0].plan.bound == 2);
    CHECK(plan.lots[0].plan.proved);
    project.kept_blanks.clear();
    CHECK(planned(project).lots[0].plan.count == 1);
}

TEST_CASE("A blank kept on a sheet to buy lies there although there are sheets at hand") {
    Project project = wall_of_three();
    add_sheet(project, "jumbo", {1630, 1120}).to_buy = true;
    project.kept_blanks = {kept_at("kelp", "jumbo", 100, 100)};
    const CardPlan plan = planned(project);
    CHECK(replay(plan.lots[0].task, plan.lots[0].plan) == "");
    CHECK(plan.cost.bought == 1);
    CHECK(plan.lots[0].plan.count == 1);
    CHECK(found(plan, "kelp")->placed.place == at(100, 100, 400, 500));
}

TEST_CASE("A blank kept on a sheet to buy is no reason to buy a second one") {
    Project project = scenes::wall_of(4000, 2500);
    for (const char* id : {"kelp", "dune", "tide"})
        add_mounted(project, id, {400, 500}).floats = true;
    add_sheet(project, "cream", {410, 510}, 2);
    add_sheet(project, "jumbo", {500, 510}).to_buy = true;
    project.kept_blanks = {kept_at("kelp", "jumbo", 0, 0)};
    project.kept_blanks[0].number = 2;
    const CardPlan plan = planned(project);
    CHECK(plan.notes.empty());
    CHECK(replay(plan.lots[0].task, plan.lots[0].plan) == "");
    CHECK(plan.cost.bought == 1);
    CHECK(plan.lots[0].plan.count == 3);
}

TEST_CASE("What drops out of a kept blank serves too") {
    Project project = scenes::wall_of(4000, 2500);
    add_mounted(project, "kelp", {600, 800});
    add_mounted(project, "reed", {180, 240});
    add_sheet(project, "cream", {610, 810});
    project.kept_blanks = {kept_at("kelp", "cream", 10, 10)};
    const CardPlan plan = planned(project);
    const CardLot& lot = plan.lots.at(0);
    CHECK(replay(lot.task, lot.plan) == "");
    REQUIRE(found(plan, "reed"));
    CHECK(lot.origins[lot.plan.sheets[found(plan, "reed")->sheet].sheet].drop_out);
    CHECK(plan.cost.bought == 0);
}

TEST_CASE("A blank that cannot stay is laid like all others, and the note says why") {
    Project project = wall_of_three();
    const auto note = [&project](wall::KeptBlank kept) {
        project.kept_blanks = {std::move(kept)};
        const CardPlan plan = planned(project, 2);
        CHECK(found(plan, "kelp"));
        CHECK(replay(plan.lots[0].task, plan.lots[0].plan) == "");
        return note_of(plan);
    };
    CHECK(note(kept_at("kelp", "cream", 800, 0)) ==
          "Kelp does not stay where it was kept: it would leave the sheet.");
    project.card[0].margin = 10;
    CHECK(note(kept_at("kelp", "cream", 5, 20)) ==
          "Kelp does not stay where it was kept: it would take of the sheet's damaged edge.");
    wall::KeptBlank third = kept_at("kelp", "cream", 20, 20);
    third.number = 3;
    CHECK(note(third) == "Kelp does not stay where it was kept: only 2 of these sheets are left.");
    add_sheet(project, "dark", {1120, 815}).colour = kDark;
    CHECK(note(kept_at("kelp", "dark", 20, 20)) ==
          "Kelp does not stay where it was kept: that sheet is used up, or of another card.");
    project.card[0].grain = wall::Grain::upright;
    CHECK(note(kept_at("kelp", "cream", 20, 20)) ==
          "Kelp does not stay where it was kept: that sheet has a grain, and blanks on it are laid "
          "by it.");
}

TEST_CASE("Of two kept blanks in each other's way the first one stays") {
    Project project = wall_of_three();
    project.kept_blanks = {kept_at("dune", "cream", 0, 0), kept_at("kelp", "cream", 300, 100)};
    const CardPlan plan = planned(project);
    CHECK(note_of(plan) ==
          "Kelp does not stay where it was kept: it would lie on Dune, which is kept there.");
    CHECK(found(plan, "dune")->placed.place == at(0, 0, 400, 300));
    CHECK_FALSE(plan.lots[0].kept[found(plan, "kelp")->placed.blank]);
}

TEST_CASE("A blank is kept where it is moved, on the sheet and number it lies on") {
    Project project = wall_of_three();
    const CardPlan plan = planned(project);
    const auto kept = kept_there(project, plan, move_of(plan, "kelp", 12.3456, 0));
    REQUIRE(kept);
    CHECK(kept->piece == wall::PieceId{"kelp"});
    CHECK(kept->layer == 1);
    CHECK(kept->sheet == wall::CardSheetId{"cream"});
    CHECK(kept->number == 1);
    CHECK(kept->left == 12.5);  // the rule's nearest line
    project.kept_blanks = {*kept};
    const CardPlan again = planned(project);
    CHECK(again.notes.empty());
    CHECK(found(again, "kelp")->placed.place == at(12.5, 0, 400, 500));
}

TEST_CASE("What was kept between the rule's lines lies on the one before") {
    Project project = wall_of_three();
    project.kept_blanks = {kept_at("kelp", "cream", 12.35, 100.99)};
    const CardPlan plan = planned(project);
    CHECK(plan.notes.empty());
    CHECK(found(plan, "kelp")->placed.place == at(12, 101, 400, 500));
}

TEST_CASE("A blank put beside a kept one is kept on the same sheet, and else on another") {
    Project project = wall_of_three();
    project.kept_blanks = {kept_at("kelp", "cream", 0, 0), kept_at("dune", "cream", 0, 0)};
    project.kept_blanks[0].number = 2;
    const CardPlan plan = planned(project);
    const std::size_t reed = found(plan, "reed")->placed.blank;
    const auto number_on = [&](const std::string& beside) {
        const auto where = found(plan, beside);
        return kept_there(project, plan, {where->lot, where->sheet, reed, 600, 0, false})
            .value()
            .number;
    };
    CHECK(number_on("kelp") == 2);
    CHECK(number_on("dune") == 1);
    project.kept_blanks.pop_back();
    const CardPlan with_one = planned(project);
    const auto kelp = found(with_one, "kelp");
    // Alone on its sheet it may take any number.
    CHECK(kept_there(project, with_one, {kelp->lot, kelp->sheet, kelp->placed.blank, 0, 0, false})
              .value()
              .number == 1);
}

TEST_CASE("Where a blank cannot be kept the problem names it and what to do") {
    Project project = wall_of_three();
    project.kept_blanks = {kept_at("dune", "cream", 0, 0)};
    const CardPlan plan = planned(project);
    CHECK(problem_of(project, plan, move_of(plan, "kelp", 900, 0)) ==
          "Kelp: it would leave the sheet; put it on the sheet with all its edges");
    CHECK(problem_of(project, plan, move_of(plan, "kelp", 300, 200)) ==
          "Kelp: it would lie on Dune, which is kept there; put it beside, or let the other one "
          "go");
    CHECK(problem_of(project, plan, move_of(plan, "dune", 300, 200)) == "no problem");
}

TEST_CASE("A blank is not kept where no straight cuts would part it") {
    Project project = scenes::wall_of(4000, 2500);
    const std::pair<const char*, OnSheet> pinwheel[] = {{"kelp", at(0, 0, 200, 100)},
                                                        {"dune", at(200, 0, 100, 200)},
                                                        {"tide", at(100, 200, 200, 100)},
                                                        {"reed", at(0, 100, 100, 200)}};
    for (const auto& [id, place] : pinwheel) {
        add_mounted(project, id, place.size).border_least = 1;
        if (std::string(id) != "reed")
            project.kept_blanks.push_back(kept_at(id, "cream", place.left, place.top));
    }
    add_sheet(project, "cream", {300, 300}, 2);
    const CardPlan plan = planned(project);
    REQUIRE(plan.lots.size() == 1);
    const auto kelp = found(plan, "kelp");
    const std::size_t reed = found(plan, "reed")->placed.blank;
    CHECK(problem_of(project, plan, {0, kelp->sheet, reed, 0, 100, false})
              .starts_with("Reed: no straight cuts from edge to edge would part it"));
    project.kept_blanks.push_back(kept_at("reed", "cream", 0, 100));
    CHECK(note_of(planned(project))
              .starts_with("Reed does not stay where it was kept: no straight cuts"));
}

TEST_CASE("Nothing is kept on a drop-out or on a sheet that is not recorded") {
    Project project = scenes::wall_of(4000, 2500);
    add_mounted(project, "kelp", {600, 800});
    add_mounted(project, "reed", {180, 240});
    add_sheet(project, "cream", {600, 800});
    const CardPlan plan = planned(project);
    CHECK(problem_of(project, plan, move_of(plan, "reed", 0, 0))
              .starts_with("Reed: a drop-out is there only once its mount is cut"));
    project.card.clear();
    const CardPlan without = planned(project);
    CHECK(problem_of(project, without, move_of(without, "kelp", 0, 0))
              .starts_with("Kelp: that sheet is not in the project's card"));
}

TEST_CASE("Whatever holds nothing kept lies in one of the empty parts") {
    rc::prop("laws of empty parts", [] {
        const OnSheet whole = at(5, 5, 600, 400);
        const auto any_place = [] {
            return at(5 + *rc::gen::inRange(0, 50) * 10, 5 + *rc::gen::inRange(0, 30) * 10,
                      *rc::gen::inRange(1, 11) * 10, *rc::gen::inRange(1, 11) * 10);
        };
        std::vector<PlacedBlank> kept;
        const int tries = *rc::gen::inRange(0, 7);
        for (int i = 0; i < tries; ++i) {
            const OnSheet place = any_place();
            if (std::none_of(kept.begin(), kept.end(), [&place](const PlacedBlank& one) {
                    return overlap(one.place, place);
                }))
                kept.push_back({.place = place});
        }
        const std::vector<OnSheet> parts = empty_parts(whole, kept);
        const auto is_empty = [&kept](const OnSheet& place) {
            return std::none_of(kept.begin(), kept.end(), [&place](const PlacedBlank& one) {
                return overlap(one.place, place);
            });
        };
        for (const OnSheet& part : parts)
            RC_ASSERT((is_empty(part) && lies_in(part, whole)));
        const OnSheet wanted = any_place();
        if (is_empty(wanted))
            RC_ASSERT(std::any_of(parts.begin(), parts.end(), [&wanted](const OnSheet& part) {
                return lies_in(wanted, part);
            }));
    });
}

TEST_CASE("Cutting about blanks brings out each of them and nothing twice") {
    rc::prop("laws of cutting about", [] {
        const OnSheet whole = at(0, 0, 1000, 800);
        std::vector<OnSheet> kept;
        const int tries = *rc::gen::inRange(0, 9);
        for (int i = 0; i < tries; ++i) {
            std::vector<OnSheet> more = kept;
            more.push_back(at(*rc::gen::inRange(0, 10) * 90.3, *rc::gen::inRange(0, 8) * 90.3,
                              *rc::gen::inRange(1, 5) * 70.1, *rc::gen::inRange(1, 5) * 70.1));
            const bool is_free = lies_in(more.back(), whole) &&
                                 std::none_of(kept.begin(), kept.end(), [&](const OnSheet& one) {
                                     return overlap(one, more.back());
                                 });
            if (is_free && cut_about(whole, more))
                kept = more;
        }
        NestTask task{.blanks = {}, .sheets = {{.id = "s", .size = whole.size, .count = 1}}};
        CutSheet sheet{.sheet = 0, .placed = {}, .cuts = {}, .offcuts = {}};
        for (const OnSheet& one : kept) {
            sheet.placed.push_back({task.blanks.size(), one, false});
            task.blanks.push_back({.id = "b", .size = one.size});
        }
        const auto about = cut_about(whole, kept);
        RC_ASSERT(about.has_value());
        if (kept.empty())
            return;
        sheet.cuts = about->cuts;
        sheet.offcuts = about->free;
        for (std::size_t i = 0; i < sheet.cuts.size(); ++i)
            sheet.cuts[i].number = static_cast<int>(i) + 1;
        NestPlan plan;
        plan.sheets = {sheet};
        plan.count = 1;
        plan.waste_area = whole.size.area();
        for (const OnSheet& one : kept)
            plan.waste_area -= one.size.area();
        plan.waste = plan.waste_area / whole.size.area();
        RC_ASSERT(replay(task, plan) == "");
    });
}
