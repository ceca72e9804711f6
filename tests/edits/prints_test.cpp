#include "edits/prints.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

const PieceId kKelp{"kelp"};
const PieceId kDune{"dune"};
const PieceId kTide{"tide"};

Print print_of(const std::string& id, double width, double height) {
    Print print;
    print.id = {id};
    print.size = {width, height};
    return print;
}

/// Ebb is in Kelp and Flow in Dune, each behind a mount; Tide is empty, and Reed in the drawer.
Project wall_with_prints() {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "kelp", {1000, 1300}, {300, 400});
    scenes::add_piece(project, "dune", {1360, 1300}, {500, 400});
    scenes::add_waiting(project, "tide", {400, 300});
    project.prints = {print_of("ebb", 200, 300), print_of("flow", 400, 300),
                      print_of("reed", 100, 150)};
    for (const char* id : {"cream", "grey"})
        project.mounts.emplace_back().id = {id};
    project.pieces[0].print = PrintId{"ebb"};
    project.pieces[0].mount = MountId{"cream"};
    project.pieces[1].print = PrintId{"flow"};
    project.pieces[1].mount = MountId{"grey"};
    return project;
}

/// The mount of Kelp has windows for Ebb and Reed.
Project wall_with_windows() {
    Project project = wall_with_prints();
    project.mounts[0].openings = {{{"ebb"}, {}, {}}, {{"reed"}, {}, {}}};
    return project;
}

PrintId print_in(const Project& project, const PieceId& id) {
    return find(project, id)->print.value_or(PrintId{"none"});
}

template <class T>
std::string problem_of(const Result<T>& result) {
    return result ? "no problem" : to_text(result.error());
}

}  // namespace

TEST_CASE("A print is put into a frame, and what was in it is back in the drawer") {
    const Project project = edits::put_print(wall_with_prints(), kKelp, PrintId{"reed"}).value();
    CHECK(print_in(project, kKelp) == PrintId{"reed"});
    CHECK(project.prints == wall_with_prints().prints);
    CHECK(find(project, kKelp)->mount == MountId{"cream"});
    CHECK(print_in(edits::put_print(project, kKelp, {}).value(), kKelp) == PrintId{"none"});
}

TEST_CASE("Several prints change their frames in one step") {
    const edits::PrintInPiece wanted[] = {
        {kKelp, PrintId{"reed"}}, {kDune, std::nullopt}, {kTide, PrintId{"flow"}}};
    const Project project = edits::put_prints(wall_with_prints(), wanted).value();
    CHECK(print_in(project, kKelp) == PrintId{"reed"});
    CHECK(print_in(project, kDune) == PrintId{"none"});
    CHECK(print_in(project, kTide) == PrintId{"flow"});
}

TEST_CASE("Two pieces change prints and keep frames and mounts") {
    const Project before = wall_with_prints();
    const Project project = edits::swap_prints(before, kKelp, kDune).value();
    CHECK(print_in(project, kKelp) == PrintId{"flow"});
    CHECK(print_in(project, kDune) == PrintId{"ebb"});
    CHECK(find(project, kKelp)->mount == MountId{"cream"});
    CHECK(project.frames == before.frames);
    CHECK(edits::swap_prints(project, kDune, kKelp).value() == before);
}

TEST_CASE("A print goes over to a piece that has none") {
    const Project project = edits::swap_prints(wall_with_prints(), kTide, kKelp).value();
    CHECK(print_in(project, kTide) == PrintId{"ebb"});
    CHECK(print_in(project, kKelp) == PrintId{"none"});
}

TEST_CASE("A piece that keeps its print does not lose it") {
    const PieceId ids[] = {kKelp, kDune};
    const Project kept = edits::set_keeps_print(wall_with_prints(), ids, true).value();
    CHECK(find(kept, kKelp)->keeps_print);
    const std::string problem =
        "pieces/kelp: it keeps its print; let its print go to put another into it";
    CHECK(problem_of(edits::put_print(kept, kKelp, PrintId{"reed"})) == problem);
    CHECK(problem_of(edits::put_print(kept, kKelp, {})) == problem);
    CHECK(problem_of(edits::swap_prints(kept, kTide, kKelp)) == problem);
    CHECK(edits::put_print(kept, kKelp, PrintId{"ebb"}).value() == kept);
    CHECK(edits::set_keeps_print(kept, ids, false).value() == wall_with_prints());
}

TEST_CASE("A copy has the same print and does not keep it") {
    const PieceId ids[] = {kKelp};
    std::vector<PieceId> made;
    Project project = edits::set_keeps_print(wall_with_prints(), ids, true).value();
    project = edits::duplicate(project, ids, {40, 0}, made).value();
    CHECK(print_in(project, made.at(0)) == PrintId{"ebb"});
    CHECK_FALSE(find(project, made.at(0))->keeps_print);
}

TEST_CASE("A piece without a print has none to keep") {
    const PieceId ids[] = {kTide};
    CHECK(problem_of(edits::set_keeps_print(wall_with_prints(), ids, true)) ==
          "pieces/tide: there is no print in it to keep; put one into it first");
    CHECK(edits::set_keeps_print(wall_with_prints(), ids, false));
}

TEST_CASE("A print or a piece that is not there is named") {
    const Project project = wall_with_prints();
    const PieceId ids[] = {{"fern"}};
    CHECK(problem_of(edits::put_print(project, kKelp, PrintId{"shell"})) ==
          "pieces/kelp/print: there is no \"shell\" in the project; add it, or name one that is "
          "there");
    const std::string no_piece =
        "pieces/fern: there is no such piece; name one that is in the project";
    CHECK(problem_of(edits::put_print(project, ids[0], PrintId{"reed"})) == no_piece);
    CHECK(problem_of(edits::swap_prints(project, kKelp, ids[0])) == no_piece);
    CHECK(problem_of(edits::set_keeps_print(project, ids, true)) == no_piece);
    const std::string no_print =
        "prints/shell: there is no such print; name one that is in the project";
    CHECK(problem_of(edits::change_print_everywhere(project, {"shell"}, [](Print&) {})) ==
          no_print);
    CHECK(problem_of(edits::remove_print(project, {"shell"})) == no_print);
}

TEST_CASE("A print joins the drawer under the id that its title makes") {
    PrintId made;
    Print print = print_of("", 210, 297);
    print.title = "Ebb";
    Project project = edits::add_print(wall_with_prints(), print, made).value();
    CHECK(made == PrintId{"ebb-2"});
    print.title.clear();
    project = edits::add_print(project, print, made).value();
    CHECK(made == PrintId{"print"});
    CHECK(find(project, made)->size == Size{210, 297});
    CHECK_FALSE(edits::add_print(project, print_of("", 0, 10), made));
    CHECK(made == PrintId{"print"});
}

TEST_CASE("A print changed everywhere changes in each piece that has it") {
    Project project = wall_with_prints();
    project.pieces[1].print = PrintId{"ebb"};
    project = edits::change_print_everywhere(project, {"ebb"}, [](Print& one) {
                  one.size.width = 180;
              }).value();
    CHECK(project.prints.size() == 3);
    CHECK(find(project, print_in(project, kKelp))->size.width == 180);
    CHECK(find(project, print_in(project, kDune))->size.width == 180);
}

TEST_CASE("A print that is taken out leaves its pieces empty and its windows go") {
    const PieceId ids[] = {kKelp};
    Project project = edits::set_keeps_print(wall_with_windows(), ids, true).value();
    project = edits::remove_print(project, {"ebb"}).value();
    CHECK(find(project, PrintId{"ebb"}) == nullptr);
    CHECK(print_in(project, kKelp) == PrintId{"none"});
    CHECK_FALSE(find(project, kKelp)->keeps_print);
    REQUIRE(project.mounts[0].openings.size() == 1);
    CHECK(project.mounts[0].openings[0].print == PrintId{"reed"});
}

TEST_CASE("The prints in the windows of a mount stay in the drawer when their piece goes") {
    const PieceId kelp[] = {kKelp};
    const Project project = edits::remove_pieces(wall_with_windows(), kelp).value();
    CHECK(find(project, MountId{"cream"}) == nullptr);
    CHECK(project.prints == wall_with_windows().prints);
}

TEST_CASE("A print seen through the piece's own mount changes where it is") {
    const Project project = edits::change_print(wall_with_windows(), kKelp, [](Print& one) {
                                one.size.width = 190;
                            }).value();
    CHECK(project.prints.size() == 3);
    CHECK(find(project, PrintId{"ebb"})->size.width == 190);
    CHECK(project.mounts == wall_with_windows().mounts);
}

TEST_CASE("A print that others see through their mounts is copied, and its window follows it") {
    Project project = wall_with_windows();
    project.pieces[1].mount = MountId{"cream"};
    project = edits::change_print(project, kKelp, [](Print& one) { one.size.width = 190; }).value();
    const Piece& kelp = *find(project, kKelp);
    REQUIRE(print_in(project, kKelp) == PrintId{"kelp"});
    CHECK(find(project, PrintId{"kelp"})->size.width == 190);
    CHECK(find(project, PrintId{"ebb"})->size.width == 200);
    REQUIRE(kelp.mount == MountId{"kelp"});
    CHECK(find(project, *kelp.mount)->openings ==
          std::vector<Opening>{{{"kelp"}, {}, {}}, {{"reed"}, {}, {}}});
    CHECK(find(project, MountId{"cream"})->openings == wall_with_windows().mounts[0].openings);
}

TEST_CASE("A mount that others share is copied with its layers and windows before it changes") {
    Project project = wall_with_windows();
    project.mounts[0].under.resize(2);
    project.mounts[0].edge = WindowEdge::straight;
    project.pieces[1].mount = MountId{"cream"};
    project = edits::change_mount(project, kDune, [](Mount& one) { one.bar = 12; }).value();
    Mount copy = *find(project, MountId{"cream"});
    CHECK(copy.bar == 30);
    copy.id = {"dune"};
    copy.bar = 12;
    CHECK(*find(project, *find(project, kDune)->mount) == copy);
}
