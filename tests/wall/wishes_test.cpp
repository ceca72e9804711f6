#include "wall/wishes.h"

#include "support/scenes.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

const PieceId kKelp{"kelp"};
const PieceId kDune{"dune"};
const FurnitureId kSofa{"sofa"};
const FixtureId kRadiator{"radiator"};

/// Kelp is planned, Dune waits; there are a sofa and a radiator.
Project small_wall() {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "kelp", {1000, 1300}, {300, 400});
    scenes::add_waiting(project, "dune", {500, 400});
    scenes::add_furniture(project, FurnitureType::sofa, Rect<Wall>::at({500, 0}, {1900, 800}));
    scenes::add_fixture(project, FixtureType::radiator, Rect<Wall>::at({2600, 100}, {800, 600}));
    return project;
}

/// The first fault of the small wall after the change; empty for none.
template <class Change>
std::string fault_after(Change change) {
    Project project = small_wall();
    change(project);
    const auto all = faults(project);
    return all.empty() ? "" : to_text(all.front());
}

std::string fault_with(const Wish& wish) {
    return fault_after([&wish](Project& project) { project.wishes.push_back(wish); });
}

std::string fault_with(const Target& target) {
    return fault_after([&target](Project& project) { project.target = target; });
}

}  // namespace

TEST_CASE("Wishes about pieces and things that are there are sound") {
    CHECK(fault_with(Wish{WishKind::side_by_side, kKelp, kDune, {}}).empty());
    CHECK(fault_with(Wish{WishKind::apart, kDune, kKelp, {}}).empty());
    CHECK(fault_with(Wish{WishKind::middle, kKelp, {}, {}}).empty());
    CHECK(fault_with(Wish{WishKind::not_over, kKelp, {}, ThingId(kSofa)}).empty());
    CHECK(fault_with(Wish{WishKind::not_over, kKelp, {}, ThingId(kRadiator)}).empty());
}

TEST_CASE("A wish about what is not there is named by its number") {
    CHECK(
        fault_with(Wish{WishKind::low, {"reed"}, {}, {}}) ==
        "wishes/#1/first: there is no \"reed\" in the project; add it, or name one that is there");
    CHECK(fault_with(Wish{WishKind::apart, kKelp, PieceId{"reed"}, {}})
              .starts_with("wishes/#1/second: there is no \"reed\""));
    CHECK(fault_with(Wish{WishKind::not_over, kKelp, {}, ThingId(FurnitureId{"bed"})})
              .starts_with("wishes/#1/furniture: there is no \"bed\""));
    CHECK(fault_with(Wish{WishKind::not_over, kKelp, {}, ThingId(FixtureId{"sofa"})})
              .starts_with("wishes/#1/fixture: there is no \"sofa\""));
}

TEST_CASE("A wish is about as much as its kind says") {
    CHECK(fault_with(Wish{WishKind::side_by_side, kKelp, {}, {}}) ==
          "wishes/#1/second: \"side_by_side\" is about two pieces; name the other piece");
    CHECK(fault_with(Wish{WishKind::low, kKelp, kDune, {}}) ==
          "wishes/#1/second: \"low\" is about one piece; leave second out");
    CHECK(fault_with(Wish{WishKind::apart, kKelp, kKelp, {}}) ==
          "wishes/#1/second: \"apart\" is about two pieces, not one; name another piece than the "
          "first");
    CHECK(fault_with(Wish{WishKind::not_over, kKelp, {}, {}}) ==
          "wishes/#1: \"not_over\" does not say what; name a piece of furniture or a fixture");
    CHECK(fault_with(Wish{WishKind::high, kKelp, {}, ThingId(kSofa)}) ==
          "wishes/#1: \"high\" is about pieces only; leave furniture and fixture out");
}

TEST_CASE("A wish is said once, whichever of two pieces is named first") {
    CHECK(fault_after([](Project& project) {
              project.wishes = {{WishKind::low, kKelp, {}, {}},
                                {WishKind::apart, kKelp, kDune, {}},
                                {WishKind::apart, kDune, kKelp, {}}};
          }) == "wishes/#3: it says the same as wish #2; leave one of them out");
    CHECK(fault_after([](Project& project) {
              project.wishes = {{WishKind::not_over, kKelp, {}, ThingId(kSofa)},
                                {WishKind::not_over, kKelp, {}, ThingId(kRadiator)},
                                {WishKind::low, kKelp, {}, {}},
                                {WishKind::low, kDune, {}, {}}};
          }).empty());
}

TEST_CASE("A target is a thing that is there, a corner, or a place that can be measured") {
    CHECK(fault_with(Target(kSofa)).empty());
    CHECK(fault_with(Target(kRadiator)).empty());
    CHECK(fault_with(Target(WallCorner::top_left)).empty());
    CHECK(fault_with(Target(Point<Wall>{-20, 1500})).empty());
    CHECK(fault_with(Target(Rect<Wall>::at({2000, 1200}, {600, 800}))).empty());
    CHECK(fault_with(Target(FurnitureId{"lamp"}))
              .starts_with("target/furniture: there is no \"lamp\""));
    CHECK(fault_with(Target(FixtureId{"door"})).starts_with("target/fixture: there is no"));
    CHECK(fault_with(Target(Point<Wall>{std::nan(""), 0})).starts_with("target: the place is out"));
    CHECK(fault_with(Target(Rect<Wall>::at({2000, 1200}, {0, 800})))
              .starts_with("target/width_mm: 0 mm is no size"));
}

TEST_CASE("A thing is where the room has it, and nowhere when the room has none such") {
    const Room room = small_wall().room;
    CHECK(place_of(room, kSofa) == Rect<Wall>::at({500, 0}, {1900, 800}));
    CHECK(place_of(room, ThingId(kSofa)) == place_of(room, kSofa));
    CHECK(place_of(room, ThingId(kRadiator)) == Rect<Wall>::at({2600, 100}, {800, 600}));
    CHECK_FALSE(place_of(room, ThingId(FixtureId{"sofa"})));
    CHECK_FALSE(place_of(room, FurnitureId{"radiator"}));
}

TEST_CASE("Weights go from 0 to 10, each measure has one, and any name will do") {
    const auto fault_of = [](std::vector<MeasureWeight> weights) {
        return fault_after([&weights](Project& project) { project.weights = std::move(weights); });
    };
    CHECK(fault_of({{"even_gaps", 0}, {"from a later version", 10}}).empty());
    CHECK(fault_of({{"even_gaps", 10.5}}) ==
          "weights/even_gaps/weight: 10.5 is out of range; give a weight from 0 to 10");
    CHECK(fault_of({{"even_gaps", -1}}).starts_with("weights/even_gaps/weight: -1 is out"));
    CHECK(fault_of({{"even_gaps", std::nan("")}}).starts_with("weights/even_gaps/weight"));
    CHECK(fault_of({{"even_gaps", 1}, {"even_gaps", 1}}) ==
          "weights/even_gaps: the measure is weighted twice; leave one of them out");
    CHECK(fault_of({{"", 1}}) == "weights/: the measure has no name; name a measure");
}

TEST_CASE("Only a planned piece has a stage") {
    const auto fault_of = [](PieceState state, int stage) {
        return fault_after([&](Project& project) {
            project.pieces[0].state = state;
            project.pieces[0].stage = stage;
        });
    };
    CHECK(fault_of(PieceState::planned, 999).empty());
    CHECK(fault_of(PieceState::planned, 1000) ==
          "pieces/kelp/stage: 1000 is no stage; number the stages from 1 to 999, or write 0 for "
          "none");
    CHECK(fault_of(PieceState::planned, -1).starts_with("pieces/kelp/stage: -1 is no stage"));
    CHECK(fault_of(PieceState::hung, 1) ==
          "pieces/kelp/stage: a piece that is hung has no stage; leave the stage out, or plan the "
          "piece");
    CHECK(fault_of(PieceState::waiting, 1)
              .starts_with("pieces/kelp/stage: a piece that is waiting has no stage"));
}

TEST_CASE("A frame that is not bought yet may wait or be planned, but cannot hang") {
    const auto fault_of = [](PieceState state) {
        return fault_after([state](Project& project) {
            project.pieces[0].state = state;
            project.pieces[0].wished = true;
        });
    };
    CHECK(fault_of(PieceState::planned).empty());
    CHECK(fault_of(PieceState::waiting).empty());
    CHECK(fault_of(PieceState::hung) ==
          "pieces/kelp/wished: a frame that is not bought yet cannot hang; leave wished out, or "
          "call the piece planned");
}
