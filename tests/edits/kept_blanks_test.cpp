// Blanks that stay where a person put them, through edits of what they are of and lie on.
#include "edits/card.h"
#include "edits/pieces.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

/// Two pieces with a mount of two layers each, one sheet at hand and one to buy.
Project wall_to_cut() {
    Project project = scenes::wall_of(3600, 2400);
    for (const char* id : {"kelp", "dune"}) {
        Mount& mount = project.mounts.emplace_back();
        mount.id = {id};
        mount.under.resize(1);
        scenes::add_waiting(project, id, {300, 400}).mount = MountId{id};
    }
    for (const char* id : {"cream", "jumbo"}) {
        CardSheet& sheet = project.card.emplace_back();
        sheet.id = {id};
        sheet.size = {1120, 815};
        sheet.to_buy = sheet.id.text == "jumbo";
    }
    return project;
}

KeptBlank kept_of(const std::string& piece, int layer, const std::string& sheet) {
    KeptBlank kept;
    kept.piece = {piece};
    kept.layer = layer;
    kept.sheet = {sheet};
    return kept;
}

/// Both layers of kelp on cream, the top one of dune on jumbo.
Project wall_with_kept() {
    Project project = wall_to_cut();
    project.kept_blanks = {kept_of("kelp", 1, "cream"), kept_of("kelp", 2, "cream"),
                           kept_of("dune", 1, "jumbo")};
    return project;
}

/// "kelp 1" for each.
std::vector<std::string> kept(const Project& project) {
    std::vector<std::string> all;
    for (const KeptBlank& one : project.kept_blanks)
        all.push_back(one.piece.text + " " + std::to_string(one.layer));
    return all;
}

using Pieces = std::vector<std::string>;

template <class T>
std::string problem_of(const Result<T>& result) {
    return result ? "no problem" : to_text(result.error());
}

}  // namespace

TEST_CASE("A blank is kept where it is put, to a file's hundredth of a mm") {
    KeptBlank wanted = kept_of("kelp", 2, "cream");
    wanted.left = 12.504;
    wanted.top = 7.999;
    wanted.turned = true;
    const Project project = edits::keep_blank(wall_to_cut(), wanted).value();
    REQUIRE(project.kept_blanks.size() == 1);
    CHECK(project.kept_blanks[0].left == 12.5);
    CHECK(project.kept_blanks[0].top == 8);
    CHECK(project.kept_blanks[0].turned);
}

TEST_CASE("A blank that is put elsewhere is no longer where it was, and keeps unknown keys") {
    Project project = wall_with_kept();
    project.kept_blanks[1].unknown["why"] = "1";
    KeptBlank wanted = kept_of("kelp", 2, "jumbo");
    wanted.number = 2;
    project = edits::keep_blank(project, wanted).value();
    CHECK(kept(project) == Pieces{"kelp 1", "kelp 2", "dune 1"});
    CHECK(project.kept_blanks[1].sheet == CardSheetId{"jumbo"});
    CHECK(project.kept_blanks[1].number == 2);
    CHECK(project.kept_blanks[1].unknown.contains("why"));
}

TEST_CASE("A blank is kept of a layer and on a sheet that are there") {
    CHECK(problem_of(edits::keep_blank(wall_to_cut(), kept_of("kelp", 3, "cream"))) ==
          "kept_blanks/#1/layer: there is no layer 3; count from 1 for the top layer to 2");
    CHECK(problem_of(edits::keep_blank(wall_to_cut(), kept_of("kelp", 1, "felt")))
              .starts_with("kept_blanks/#1/sheet: there is no \"felt\""));
}

TEST_CASE("A kept blank is let go by its piece and layer") {
    const Project project = edits::free_blank(wall_with_kept(), {"kelp"}, 1).value();
    CHECK(kept(project) == Pieces{"kelp 2", "dune 1"});
    CHECK(problem_of(edits::free_blank(project, {"kelp"}, 1)) ==
          "kept_blanks: layer 1 of \"kelp\" is not kept anywhere; name one that is");
}

TEST_CASE("What takes a piece, a mount, a layer or a sheet away takes the blanks kept of it") {
    const Project before = wall_with_kept();
    const PieceId kelp[] = {{"kelp"}};
    CHECK(kept(edits::remove_pieces(before, kelp).value()) == Pieces{"dune 1"});
    CHECK(kept(edits::without_mount(before, {"kelp"}).value()) == Pieces{"dune 1"});
    CHECK(kept(edits::change_mount(before, {"kelp"}, [](Mount& one) {
                   one.under.clear();
               }).value()) == Pieces{"kelp 1", "dune 1"});
    CHECK(kept(edits::change_piece(before, {"kelp"}, [](Piece& one) {
                   one.mount.reset();
               }).value()) == Pieces{"dune 1"});
    CHECK(kept(edits::remove_card(before, {"jumbo"}).value()) == Pieces{"kelp 1", "kelp 2"});
}

TEST_CASE("Blanks that are cut are kept no longer, and those of others stay on what is left") {
    Project project = wall_with_kept();
    project.kept_blanks[0].sheet = {"jumbo"};
    project.kept_blanks[1].sheet = {"jumbo"};
    project.kept_blanks[2].number = 3;
    const std::vector<edits::UsedCard> used = {{{"jumbo"}, 2}};
    const Project cut = edits::use_card(project, {used, {}, {PieceId{"kelp"}}}).value();
    CHECK(kept(cut) == Pieces{"dune 1"});
    CHECK(cut.kept_blanks[0].number == 1);
    CHECK(find(cut, PieceId{"kelp"})->mount_cut);
    CHECK_FALSE(find(cut, PieceId{"dune"})->mount_cut);
}

TEST_CASE("Blanks kept on an offcut go with it") {
    Project project = wall_with_kept();
    project.card[0].offcut = true;
    const std::vector<edits::UsedCard> used = {{{"cream"}, 1}};
    CHECK(kept(edits::use_card(project, {used, {}, {}}).value()) == Pieces{"dune 1"});
}
