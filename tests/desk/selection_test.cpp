#include "desk/selection.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;
using namespace wallwright::scenes;

namespace {

const wall::PieceId kKelp{"kelp"};
const wall::PieceId kDune{"dune"};
const wall::FurnitureId kSofa{"sofa"};

}  // namespace

TEST_CASE("Pieces are selected together, furniture alone") {
    Selection selection;
    selection.toggle(kKelp);
    selection.toggle(kDune);
    CHECK(selection.pieces() == std::vector<wall::PieceId>{kKelp, kDune});
    CHECK_FALSE(selection.one_piece());

    selection.toggle(kSofa);
    CHECK(selection.furniture() == kSofa);
    CHECK(selection.pieces().empty());

    selection.toggle(kKelp);
    CHECK(selection.one_piece() == kKelp);
    CHECK_FALSE(selection.furniture());
}

TEST_CASE("Toggling twice leaves the selection as it was") {
    Selection selection;
    selection.set({kKelp, kDune});
    const Selection before = selection;
    selection.toggle(wall::PieceId{"tide"});
    CHECK_FALSE(selection == before);
    selection.toggle(wall::PieceId{"tide"});
    CHECK(selection == before);
}

TEST_CASE("What the project lost is selected no more") {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    Selection selection;
    selection.set({kKelp, kDune});
    selection.keep_only_in(project);
    CHECK(selection.pieces() == std::vector<wall::PieceId>{kKelp});
    selection.set(Thing{kSofa});
    selection.keep_only_in(project);
    CHECK(selection.empty());
}

TEST_CASE("A thing is found by its id, with its place and what it is called") {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_waiting(project, "dune", {200, 200});
    add_furniture(project, wall::FurnitureType::sofa,
                  wall::Rect<wall::Wall>::at({500, 0}, {1900, 800}));
    CHECK(place_of(project, kKelp) == geometry::Rect<geometry::Wall>::at({1000, 1300}, {300, 400}));
    CHECK_FALSE(place_of(project, kDune));
    CHECK(place_of(project, kSofa)->width() == 1900);
    CHECK_FALSE(place_of(project, wall::FixtureId{"door"}));
    CHECK(title_of(project, kKelp) == "Kelp");
    CHECK(title_of(project, kSofa) == "the sofa");
}
