#include "edits/card.h"

#include "edits/pieces.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

CardSheet sheet_of(double width, double height, std::string title = "") {
    CardSheet sheet;
    sheet.title = std::move(title);
    sheet.size = {width, height};
    return sheet;
}

/// Three sheets of cream, one offcut of it, and jumbo sheets to buy.
Project wall_with_card() {
    Project project = scenes::wall_of(3600, 2400);
    project.card = {sheet_of(1120, 815, "Cream"), sheet_of(420, 300), sheet_of(1630, 1120)};
    project.card[0].id = {"cream"};
    project.card[0].count = 3;
    project.card[1].id = {"offcut"};
    project.card[1].offcut = true;
    project.card[2].id = {"jumbo"};
    project.card[2].to_buy = true;
    return project;
}

template <class T>
std::string problem_of(const Result<T>& result) {
    return result ? "no problem" : to_text(result.error());
}

}  // namespace

TEST_CASE("A sheet of card gets the id that its title makes, or one for what it is") {
    CardSheetId made;
    Project project = edits::add_card(wall_with_card(), sheet_of(1120, 815, "Cream"), made).value();
    CHECK(made == CardSheetId{"cream-2"});
    CHECK(find(project, made)->size == Size{1120, 815});
    CHECK(find(project, CardSheetId{"cream"})->count == 3);
    project = edits::add_card(project, sheet_of(1120, 815), made).value();
    CHECK(made == CardSheetId{"sheet"});
    CardSheet offcut = sheet_of(200, 300);
    offcut.offcut = true;
    project = edits::add_card(project, offcut, made).value();
    CHECK(made == CardSheetId{"offcut-2"});
    CHECK(project.card.size() == 6);
}

TEST_CASE("A sheet without a size is not added, and no id is made") {
    CardSheetId made{"before"};
    CHECK(problem_of(edits::add_card(wall_with_card(), sheet_of(0, 815), made))
              .starts_with("card/sheet/width_mm: 0 mm is no size"));
    CHECK(made == CardSheetId{"before"});
}

TEST_CASE("A sheet's measures and price are kept as a file keeps them") {
    const Project project = edits::change_card(wall_with_card(), {"cream"}, [](CardSheet& one) {
                                one.size = {1120.001, 814.9999};
                                one.margin = 5.004;
                                one.price = 18.49999;
                                one.grain = Grain::upright;
                            }).value();
    const CardSheet& cream = *find(project, CardSheetId{"cream"});
    CHECK(cream.size == Size{1120, 815});
    CHECK(cream.margin == 5);
    CHECK(cream.price == 18.5);
    CHECK(cream.grain == Grain::upright);
}

TEST_CASE("A change that leaves nothing of a sheet is refused") {
    CHECK(problem_of(edits::change_card(wall_with_card(), {"offcut"}, [](CardSheet& one) {
              one.margin = 150;
          })).starts_with("card/offcut/margin_mm: two margins of 150 mm leave nothing of 300 mm"));
}

TEST_CASE("A sheet is taken out by its id") {
    const Project project = edits::remove_card(wall_with_card(), {"cream"}).value();
    CHECK(find(project, CardSheetId{"cream"}) == nullptr);
    CHECK(project.card.size() == 2);
}

TEST_CASE("A sheet that is not there is named by every edit") {
    const std::string problem =
        "card/felt: there is no such sheet; name one that is in the project";
    const std::vector<edits::UsedCard> used = {{{"felt"}, 1}};
    CHECK(problem_of(edits::change_card(wall_with_card(), {"felt"}, [](CardSheet&) {})) == problem);
    CHECK(problem_of(edits::remove_card(wall_with_card(), {"felt"})) == problem);
    CHECK(problem_of(edits::use_card(wall_with_card(), {used, {}, {}})) == problem);
}

TEST_CASE("What a plan used is taken off, and what is left joins as offcuts") {
    const std::vector<edits::UsedCard> used = {
        {{"cream"}, 1}, {{"cream"}, 1}, {{"offcut"}, 1}, {{"jumbo"}, 2}};
    std::vector<CardSheet> left = {sheet_of(300, 815), sheet_of(500.004, 200)};
    left[0].to_buy = true;
    const Project project = edits::use_card(wall_with_card(), {used, left, {}}).value();
    REQUIRE(project.card.size() == 4);
    CHECK(find(project, CardSheetId{"cream"})->count == 1);
    CHECK(*find(project, CardSheetId{"jumbo"}) == wall_with_card().card[2]);
    const CardSheet& first = *find(project, CardSheetId{"offcut"});
    CHECK(first.size == Size{300, 815});
    CHECK(first.offcut);
    CHECK_FALSE(first.to_buy);
    CHECK(find(project, CardSheetId{"offcut-2"})->size == Size{500, 200});
}

TEST_CASE("A kind of sheet of which none is left stays, to be counted anew") {
    const std::vector<edits::UsedCard> used = {{{"cream"}, 3}};
    const Project project = edits::use_card(wall_with_card(), {used, {}, {}}).value();
    REQUIRE(find(project, CardSheetId{"cream"}) != nullptr);
    CHECK(find(project, CardSheetId{"cream"})->count == 0);
}

TEST_CASE("More sheets than there are cannot be used") {
    const std::vector<edits::UsedCard> used = {{{"cream"}, 2}, {{"cream"}, 2}};
    CHECK(problem_of(edits::use_card(wall_with_card(), {used, {}, {}})) ==
          "card/cream: the plan takes 2 of them, and there are 1; plan again with what is at hand");
}

TEST_CASE("A mount that is cut needs no place on a sheet, and a piece without one is not cut") {
    Project project = wall_with_card();
    scenes::add_waiting(project, "kelp", {300, 400});
    const PieceId kelp[] = {PieceId{"kelp"}};
    CHECK(problem_of(edits::set_mount_cut(project, kelp, true))
              .starts_with("pieces/kelp: it has no mount"));
    project.mounts.emplace_back().id = {"white"};
    project.pieces[0].mount = MountId{"white"};
    project.kept_blanks.push_back({kelp[0], 1, CardSheetId{"cream"}});
    const Project cut = edits::set_mount_cut(project, kelp, true).value();
    CHECK(cut.pieces[0].mount_cut);
    CHECK(cut.kept_blanks.empty());
    CHECK_FALSE(edits::set_mount_cut(cut, kelp, false).value().pieces[0].mount_cut);
}

TEST_CASE("What a cut mount costs is set, kept to a thousandth, and taken out again") {
    const Project bare = wall_with_card();
    const Project priced = edits::set_mount_cut_price(bare, 14.0004).value();
    CHECK(priced.mount_cut_price == 14);
    CHECK(edits::set_mount_cut_price(priced, std::nullopt).value() == bare);
    CHECK(problem_of(edits::set_mount_cut_price(bare, -1)).starts_with("mount_cut_price: -1"));
}

TEST_CASE("Windows and ratios of a mount are kept as a file keeps them") {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "kelp", {1000, 1300}, {300, 400});
    project = edits::change_mount(project, {"kelp"}, [](Mount& one) {
                  one.base_ratio = 4.0 / 3;
                  one.by_hand = FromCorner{40.0 / 3, 25};
              }).value();
    CHECK(project.mounts.at(0).base_ratio == 1.333);
    CHECK(project.mounts.at(0).by_hand == FromCorner{13.33, 25});
}
