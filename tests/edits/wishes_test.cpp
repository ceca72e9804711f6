#include "edits/wishes.h"

#include "edits/edit.h"
#include "edits/room.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

const PieceId kKelp{"kelp"};
const PieceId kDune{"dune"};
const PieceId kFern{"fern"};
const PieceId kTide{"tide"};
const FurnitureId kSofa{"sofa"};
const FixtureId kRadiator{"radiator"};

/// Kelp and Dune are planned for stages 1 and 2, Fern hangs, Tide waits; there are a sofa and a
/// radiator.
Project small_wall() {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "kelp", {1000, 1300}, {300, 400}).stage = 1;
    scenes::add_piece(project, "dune", {1360, 1300}, {500, 400}).stage = 2;
    scenes::add_hung(project, "fern", {2000, 1300}, {300, 400});
    scenes::add_waiting(project, "tide", {400, 300});
    scenes::add_furniture(project, FurnitureType::sofa, Rect<Wall>::at({500, 0}, {1900, 800}));
    scenes::add_fixture(project, FixtureType::radiator, Rect<Wall>::at({2600, 100}, {800, 600}));
    return project;
}

/// With a wish of each kind and the sofa as the target.
Project wishing_wall() {
    Project project = small_wall();
    project.wishes = {{WishKind::side_by_side, kKelp, kDune, {}},
                      {WishKind::middle, kTide, {}, {}},
                      {WishKind::not_over, kTide, {}, ThingId(kSofa)},
                      {WishKind::not_over, kTide, {}, ThingId(kRadiator)}};
    project.target = kSofa;
    project.target_unknown["part"] = "1";
    return project;
}

std::vector<WishKind> kinds(const Project& project) {
    std::vector<WishKind> all;
    for (const Wish& wish : project.wishes)
        all.push_back(wish.kind);
    return all;
}

template <class T>
std::string problem_of(const Result<T>& result) {
    return result ? "no problem" : to_text(result.error());
}

}  // namespace

TEST_CASE("A wish is added at the end and taken back by its index") {
    const Wish wish{WishKind::apart, kKelp, kDune, {}};
    const Project more = edits::add_wish(wishing_wall(), wish).value();
    CHECK(more.wishes.back() == wish);
    CHECK(edits::remove_wish(more, 4).value() == wishing_wall());
    CHECK(kinds(edits::remove_wish(wishing_wall(), 0).value()) ==
          std::vector<WishKind>{WishKind::middle, WishKind::not_over, WishKind::not_over});
}

TEST_CASE("A wish that is there already, or that no wall can hold, is refused") {
    CHECK(problem_of(edits::add_wish(wishing_wall(), {WishKind::side_by_side, kDune, kKelp, {}})) ==
          "pieces/dune: this is wished already; take the wish back first to change it");
    CHECK(problem_of(edits::add_wish(wishing_wall(), {WishKind::apart, kDune, {}, {}})) ==
          "wishes/#5/second: \"apart\" is about two pieces; name the other piece");
}

TEST_CASE("A wish that is not there cannot be taken back") {
    CHECK(problem_of(edits::remove_wish(wishing_wall(), 4)) ==
          "wishes/#5: there is no such wish; give one from #1 to #4");
    CHECK(problem_of(edits::remove_wish(small_wall(), 0)) ==
          "wishes/#1: there is no such wish; there are no wishes to take back");
}

TEST_CASE("A target replaces another, to the hundredth of a mm, or goes") {
    const Project there =
        edits::set_target(wishing_wall(), Target(Point<Wall>{1000.004, 1500.006})).value();
    CHECK(there.target == Target(Point<Wall>{1000, 1500.01}));
    CHECK(there.target_unknown.empty());
    const Project region =
        edits::set_target(there, Target(Rect<Wall>::at({1000.004, 1200}, {300.001, 400}))).value();
    CHECK(region.target == Target(Rect<Wall>::at({1000, 1200}, {300, 400})));
    CHECK(edits::set_target(wishing_wall(), Target(kSofa)).value() == wishing_wall());
    CHECK_FALSE(edits::set_target(wishing_wall(), {}).value().target.has_value());
    CHECK_FALSE(edits::set_target(small_wall(), Target(FurnitureId{"lamp"})));
}

TEST_CASE("A weight is set, changed and given back to what is usual") {
    Project project = edits::set_weight(small_wall(), "even_gaps", 2.00004).value();
    project = edits::set_weight(project, "balance", 0).value();
    CHECK(project.weights == std::vector<MeasureWeight>{{"even_gaps", 2}, {"balance", 0}});
    project = edits::set_weight(project, "even_gaps", 5).value();
    CHECK(project.weights == std::vector<MeasureWeight>{{"even_gaps", 5}, {"balance", 0}});
    project = edits::set_weight(project, "even_gaps", {}).value();
    project = edits::set_weight(project, "alignment", {}).value();
    CHECK(project.weights == std::vector<MeasureWeight>{{"balance", 0}});
    CHECK(problem_of(edits::set_weight(project, "balance", 11)) ==
          "weights/balance/weight: 11 is out of range; give a weight from 0 to 10");
}

TEST_CASE("Frames are called not bought yet and bought again, but not those that hang") {
    const PieceId ids[] = {kKelp, kTide};
    const Project wished = edits::set_wished(small_wall(), ids, true).value();
    CHECK(find(wished, kKelp)->wished);
    CHECK(find(wished, kTide)->wished);
    CHECK_FALSE(find(wished, kDune)->wished);
    CHECK(edits::set_wished(wished, ids, false).value() == small_wall());
    const PieceId hung[] = {kFern};
    CHECK(problem_of(edits::set_wished(small_wall(), hung, true)) ==
          "pieces/fern: it hangs already, so its frame is bought; call it planned to wish for "
          "another frame");
    CHECK(edits::set_wished(small_wall(), hung, false).value() == small_wall());
}

TEST_CASE("A wished piece that is hung is bought, and its stage is past") {
    const PieceId ids[] = {kKelp};
    Project project = edits::set_wished(small_wall(), ids, true).value();
    project = edits::set_state(project, ids, PieceState::hung).value();
    CHECK_FALSE(find(project, kKelp)->wished);
    CHECK(find(project, kKelp)->stage == 0);
    CHECK(find(project, kDune)->stage == 2);
}

TEST_CASE("A piece that is called planned again keeps its stage, and one taken down loses it") {
    const PieceId ids[] = {kDune};
    CHECK(edits::set_state(small_wall(), ids, PieceState::planned).value() == small_wall());
    Project project = edits::set_wished(small_wall(), ids, true).value();
    project = edits::take_down(project, ids).value();
    CHECK(find(project, kDune)->stage == 0);
    CHECK(find(project, kDune)->wished);
    const edits::Move back[] = {{kDune, {1360, 1300}}};
    CHECK(find(edits::place(project, back).value(), kDune)->stage == 0);
}

TEST_CASE("Stages belong to places, so two that swap swap them too") {
    const Project two = edits::swap_places(small_wall(), kKelp, kDune).value();
    CHECK(find(two, kKelp)->stage == 2);
    CHECK(find(two, kDune)->stage == 1);
    const Project one = edits::swap_places(small_wall(), kKelp, kTide).value();
    CHECK(find(one, kKelp)->stage == 0);
    CHECK(find(one, kTide)->stage == 1);
}

TEST_CASE("Without stages the pieces stay where they are") {
    const Project cleared = edits::clear_stages(small_wall()).value();
    for (const Piece& piece : cleared.pieces)
        CHECK(piece.stage == 0);
    CHECK(placed_pieces(cleared) == placed_pieces(small_wall()));
}

TEST_CASE("A copy has no stage and no wishes") {
    const PieceId ids[] = {kKelp};
    std::vector<PieceId> made;
    const Project wished = edits::set_wished(wishing_wall(), ids, true).value();
    const Project project = edits::duplicate(wished, ids, {40, 40}, made).value();
    CHECK(find(project, made.at(0))->stage == 0);
    CHECK(find(project, made.at(0))->wished);
    CHECK(project.wishes == wishing_wall().wishes);
}

TEST_CASE("With a piece go the wishes that name it, first or second") {
    const PieceId dune[] = {kDune};
    CHECK(kinds(edits::remove_pieces(wishing_wall(), dune).value()) ==
          std::vector<WishKind>{WishKind::middle, WishKind::not_over, WishKind::not_over});
    const PieceId tide[] = {kTide};
    CHECK(kinds(edits::remove_pieces(wishing_wall(), tide).value()) ==
          std::vector<WishKind>{WishKind::side_by_side});
}

TEST_CASE("With furniture or a fixture go the wishes about it and the target that it is") {
    const Project no_sofa = edits::remove(wishing_wall(), kSofa).value();
    REQUIRE(no_sofa.wishes.size() == 3);
    CHECK(no_sofa.wishes.back().thing == ThingId(kRadiator));
    CHECK_FALSE(no_sofa.target.has_value());
    CHECK(no_sofa.target_unknown.empty());
    const Project no_radiator = edits::remove(wishing_wall(), kRadiator).value();
    REQUIRE(no_radiator.wishes.size() == 3);
    CHECK(no_radiator.wishes.back().thing == ThingId(kSofa));
    CHECK(no_radiator.target == Target(kSofa));
    Project project = wishing_wall();
    project.target = kRadiator;
    CHECK_FALSE(edits::remove(project, kRadiator).value().target.has_value());
}
