#include "edits/pieces.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

const PieceId kKelp{"kelp"};
const PieceId kDune{"dune"};
const PieceId kTide{"tide"};

/// Kelp and Dune are planned, Fern hangs, Tide waits.
Project small_wall() {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "kelp", {1000, 1300}, {300, 400});
    scenes::add_piece(project, "dune", {1360, 1300}, {500, 400});
    scenes::add_hung(project, "fern", {2000, 1300}, {300, 400});
    scenes::add_waiting(project, "tide", {400, 300});
    return project;
}

/// Kelp and Dune have one frame, one mount and one print between them.
Project sharing_wall() {
    Project project = small_wall();
    Mount mount;
    mount.id = {"cream"};
    Print print;
    print.id = {"lino"};
    print.size = {200, 300};
    project.mounts.push_back(mount);
    project.prints.push_back(print);
    for (Piece& piece : project.pieces)
        if (piece.id == kKelp || piece.id == kDune) {
            piece.frame = {"kelp"};
            piece.mount = mount.id;
            piece.print = print.id;
        }
    return project;
}

template <class T>
std::string problem_of(const Result<T>& result) {
    return result ? "no problem" : to_text(result.error());
}

}  // namespace

TEST_CASE("A change by hand is kept when it is sound") {
    const auto changed =
        edits::change_piece(small_wall(), kKelp, [](Piece& piece) { piece.weighed = {1.5}; });
    CHECK(find(*changed, kKelp)->weighed == Kilograms{1.5});
    CHECK(problem_of(edits::change_piece(small_wall(), kKelp,
                                         [](Piece& piece) { piece.weighed = {-1}; })) ==
          "pieces/kelp/weighed_kg: -1 kg is no weight; give a weight of more than 0 and at most "
          "1000 kg");
}

TEST_CASE("A piece that is not there is named by every edit") {
    const PieceId ids[] = {kKelp, {"reed"}};
    const Project project = small_wall();
    std::vector<PieceId> made;
    const std::string problem =
        "pieces/reed: there is no such piece; name one that is in the project";
    CHECK(problem_of(edits::change_piece(project, ids[1], [](Piece&) {})) == problem);
    CHECK(problem_of(edits::change_frame(project, ids[1], [](Frame&) {})) == problem);
    CHECK(problem_of(edits::change_mount(project, ids[1], [](Mount&) {})) == problem);
    CHECK(problem_of(edits::change_print(project, ids[1], [](Print&) {})) == problem);
    CHECK(problem_of(edits::without_mount(project, ids[1])) == problem);
    CHECK(problem_of(edits::shift(project, ids, {1, 1})) == problem);
    CHECK(problem_of(edits::take_down(project, ids)) == problem);
    CHECK(problem_of(edits::set_state(project, ids, PieceState::hung)) == problem);
    CHECK(problem_of(edits::set_pinned(project, ids, true)) == problem);
    CHECK(problem_of(edits::turn(project, ids)) == problem);
    CHECK(problem_of(edits::swap_places(project, ids[0], ids[1])) == problem);
    CHECK(problem_of(edits::remove_pieces(project, ids)) == problem);
    CHECK(problem_of(edits::duplicate(project, ids, {1, 1}, made)) == problem);
    CHECK(problem_of(edits::align(project, ids, edits::Line::top)) == problem);
    CHECK(problem_of(edits::distribute(project, ids, edits::Direction::up)) == problem);
    CHECK(made.empty());
}

TEST_CASE("Taken down, a piece waits without place or pin, even one that hung") {
    const PieceId ids[] = {kKelp, {"fern"}, kTide};
    Project project = edits::set_pinned(small_wall(), std::span(ids).first(1), true).value();
    project = edits::take_down(project, ids).value();
    for (const PieceId& id : ids) {
        CHECK(find(project, id)->state == PieceState::waiting);
        CHECK_FALSE(find(project, id)->at.has_value());
        CHECK_FALSE(find(project, id)->pinned);
    }
    CHECK(find(project, kDune)->state == PieceState::planned);
}

TEST_CASE("A piece is called hung or planned where it is") {
    const PieceId ids[] = {kKelp, {"fern"}};
    const Project hung = edits::set_state(small_wall(), ids, PieceState::hung).value();
    CHECK(find(hung, kKelp)->state == PieceState::hung);
    CHECK(find(hung, kKelp)->at == Point<Wall>{1000, 1300});
    const Project planned = edits::set_state(hung, ids, PieceState::planned).value();
    CHECK(find(planned, ids[1])->state == PieceState::planned);
    CHECK(edits::set_state(planned, ids, PieceState::waiting).value() ==
          edits::take_down(planned, ids).value());
}

TEST_CASE("What waits on the floor cannot be hung, pinned, shifted or lined up") {
    const PieceId ids[] = {kKelp, kDune, kTide};
    const Project project = small_wall();
    const std::string problem = "pieces/tide: it waits on the floor; put it on the wall first";
    CHECK(problem_of(edits::set_state(project, ids, PieceState::hung)) == problem);
    CHECK(problem_of(edits::set_pinned(project, ids, true)) == problem);
    CHECK(problem_of(edits::shift(project, ids, {1, 1})) == problem);
    CHECK(problem_of(edits::align(project, ids, edits::Line::left)) == problem);
    CHECK(problem_of(edits::distribute(project, ids, edits::Direction::across)) == problem);
}

TEST_CASE("A pin holds until it is taken out") {
    const PieceId ids[] = {kKelp};
    const Project pinned = edits::set_pinned(small_wall(), ids, true).value();
    CHECK(problem_of(edits::shift(pinned, ids, {1, 0})) ==
          "pieces/kelp: it is pinned; unpin it to move it");
    CHECK(edits::set_pinned(pinned, ids, false).value() == small_wall());
}

TEST_CASE("A copy has a frame and an id of its own and is planned beside the original") {
    const PieceId ids[] = {{"fern"}, kTide};
    std::vector<PieceId> made;
    const Project project = edits::duplicate(small_wall(), ids, {40, -40}, made).value();
    REQUIRE(made == std::vector<PieceId>{{"fern-2"}, {"tide-2"}});
    const Piece& fern = *find(project, made[0]);
    CHECK(fern.title == "Fern");
    CHECK(fern.frame == FrameId{"fern-2"});
    CHECK(fern.state == PieceState::planned);
    CHECK(fern.at == Point<Wall>{2040, 1260});
    CHECK(outside_size(project, fern) == Size{300, 400});
    CHECK(find(project, made[1])->state == PieceState::waiting);
    CHECK(find(project, ids[0])->at == Point<Wall>{2000, 1300});
}

TEST_CASE("Removed pieces take along what only they had, and leave their prints in the drawer") {
    Project project = sharing_wall();
    Frame spare;
    spare.id = {"spare"};
    spare.outside = {300, 300};
    project.frames.push_back(spare);
    const PieceId one[] = {kKelp};
    const Project without_kelp = edits::remove_pieces(project, one).value();
    CHECK(find(without_kelp, kKelp) == nullptr);
    CHECK(without_kelp.mounts.size() == 1);
    const PieceId other[] = {kDune};
    const Project without_both = edits::remove_pieces(without_kelp, other).value();
    CHECK(find(without_both, FrameId{"kelp"}) == nullptr);
    CHECK(without_both.mounts.empty());
    CHECK(without_both.prints == project.prints);
    CHECK(find(without_both, FrameId{"spare"}) != nullptr);
    CHECK(find(without_both, FrameId{"fern"}) != nullptr);
}

TEST_CASE(
    "Marks are measured from the floor again once the piece they were measured from is gone") {
    Project project = sharing_wall();
    project.datum.height = DatumHeight::piece;
    project.datum.piece = kKelp;
    const PieceId dune[] = {kDune};
    CHECK(edits::remove_pieces(project, dune)->datum == project.datum);
    const PieceId kelp[] = {kKelp};
    const Project without = edits::remove_pieces(project, kelp).value();
    CHECK(without.datum.height == DatumHeight::floor);
    CHECK_FALSE(without.datum.piece);
}

TEST_CASE("A part that others share is copied before it changes") {
    Project project = sharing_wall();
    project = edits::change_frame(project, kDune, [](Frame& one) {
                  one.outside = {610, 410};
              }).value();
    project = edits::change_mount(project, kDune, [](Mount& one) { one.overlap = 8; }).value();
    project = edits::change_print(project, kDune, [](Print& one) { one.size.width = 400; }).value();
    const Piece& kelp = *find(project, kKelp);
    const Piece& dune = *find(project, kDune);
    CHECK(outside_size(project, kelp) == Size{300, 400});
    CHECK(outside_size(project, dune) == Size{610, 410});
    CHECK(find(project, *kelp.mount)->overlap == 5);
    CHECK(find(project, *dune.mount)->overlap == 8);
    CHECK(find(project, *kelp.print)->size == Size{200, 300});
    CHECK(find(project, *dune.print)->size == Size{400, 300});
}

TEST_CASE("A part that one piece has alone changes where it is") {
    const Project project =
        edits::change_frame(small_wall(), kKelp, [](Frame& one) { one.depth = 35; }).value();
    CHECK(project.frames.size() == small_wall().frames.size());
    CHECK(find(project, FrameId{"kelp"})->depth == 35);
}

TEST_CASE("A change that makes a frame impossible is refused") {
    const auto changed =
        edits::change_frame(small_wall(), kKelp, [](Frame& one) { one.outside.width = 30; });
    CHECK(problem_of(changed) ==
          "frames/kelp/moulding_width_mm: two mouldings of 20 mm leave nothing of 30 mm; give the "
          "width of the moulding as seen from the front");
}

TEST_CASE("A print that is not there yet is made to lie in the frame as it hangs") {
    const PieceId ids[] = {kTide};
    Project project = edits::turn(small_wall(), ids).value();
    project = edits::change_print(project, kTide, [](Print&) {}).value();
    // 300 x 400 less mouldings of 20, and lips of 6 that cover it, and 2 to spare.
    CHECK(find(project, *find(project, kTide)->print)->size == Size{270, 370});
    CHECK(find(project, *find(project, kTide)->print)->title == "Tide");
}

TEST_CASE("A print that is made for a mount leaves a border to it") {
    Project project =
        edits::change_mount(small_wall(), kKelp, [](Mount& one) { one.base_extra = 5; }).value();
    CHECK(find(project, *find(project, kKelp)->mount)->base_extra == 5);
    project = edits::change_print(project, kKelp, [](Print&) {}).value();
    // A sixth of 272 on each side.
    CHECK(find(project, *find(project, kKelp)->print)->size == Size{181, 281});
}

TEST_CASE("A mount that is taken out goes with the last piece that had it") {
    const Project once = edits::without_mount(sharing_wall(), kKelp).value();
    CHECK_FALSE(find(once, kKelp)->mount.has_value());
    CHECK(once.mounts.size() == 1);
    CHECK(edits::without_mount(once, kDune).value().mounts.empty());
    CHECK(edits::without_mount(once, kKelp).value() == once);
}
