#include "arrange/grow.h"
#include "growing.h"
#include "support/scenes.h"
#include "wall/find_in.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::arrange;

namespace {

struct Grown {
    wall::Project before;
    Growth growth;
    wall::Project after;
};

Grown grown(wall::Project project) {
    const Task task = task_of(project, scenes::small_catalogue(), Free::waiting_alone);
    GrowOptions options;
    options.per_stage = 2;
    options.rounds = 1;
    options.seconds = 1e6;
    const WallRect target = place_of(project.room, wall::FurnitureId{"lamp"}).value();
    Growth growth = grow(task, target, options, [](double) { return true; });
    wall::Project after = with_growth(project, task, growth).value();
    return {std::move(project), std::move(growth), std::move(after)};
}

}  // namespace

TEST_CASE("A growth gives its pieces places and stages from 1 on") {
    const Grown wall = grown(growing::row_over_sofa(5));
    CHECK(wall::faults(wall.after).empty());
    CHECK(last_stage(wall.after) == 3);
    for (std::size_t i = 0; i < wall.growth.stages.size(); ++i)
        for (const wall::PieceId& id : wall.growth.stages[i].adds) {
            const wall::Piece* piece = wall::find_in(wall.after.pieces, id);
            CHECK(piece->stage == static_cast<int>(i) + 1);
            CHECK(piece->state == wall::PieceState::planned);
            CHECK(piece->at.has_value());
        }
}

TEST_CASE("Growth leaves all else as it was") {
    Grown wall = grown(growing::row_over_sofa(3));
    for (const Stage& stage : wall.growth.stages)
        for (const wall::PieceId& id : stage.adds) {
            wall::Piece* piece = wall::find_in(wall.after.pieces, id);
            piece->at.reset();
            piece->state = wall::PieceState::waiting;
            piece->stage = 0;
        }
    CHECK(wall.after == wall.before);
}

TEST_CASE("At stage 0 the wall is as today, at the last as grown") {
    const Grown wall = grown(growing::row_over_sofa(5));
    CHECK(at_stage(wall.after, 0) == wall.before);
    CHECK(at_stage(wall.after, last_stage(wall.after)) == wall.after);
}

TEST_CASE("At a stage those of later ones wait") {
    const Grown wall = grown(growing::row_over_sofa(5));
    for (int stage = 0; stage <= 3; ++stage) {
        const wall::Project then = at_stage(wall.after, stage);
        CHECK(wall::faults(then).empty());
        for (const wall::Piece& piece : wall.after.pieces) {
            const bool later = piece.stage > stage;
            CHECK((wall::find_in(then.pieces, piece.id)->state == wall::PieceState::waiting) ==
                  later);
        }
    }
}

TEST_CASE("Growth starts without the stages from before") {
    const Grown wall = grown(growing::row_over_sofa(5));
    CHECK(growth_start(wall.after) == wall.before);
    CHECK(growth_start(wall.before) == wall.before);
}

TEST_CASE("A second growth counts its stages from 1 and leaves pinned pieces where they are") {
    wall::Project project = grown(growing::row_over_sofa(4)).after;
    scenes::add_waiting(project, "late", {240, 300});
    wall::Piece& pinned = *wall::find_in(project.pieces, {"new2"});
    pinned.pinned = true;
    const auto place = pinned.at;
    const wall::Project after = grown(growth_start(project)).after;
    CHECK(wall::faults(after).empty());
    CHECK(last_stage(after) == 2);
    for (const char* id : {"new1", "new3", "new4", "late"})
        CHECK(wall::find_in(after.pieces, {id})->stage > 0);
    const wall::Piece& still = *wall::find_in(after.pieces, {"new2"});
    CHECK(still.at == place);
    CHECK(still.pinned);
    CHECK(still.stage == 0);
}

TEST_CASE("A wall that has not grown has no stage") {
    CHECK(last_stage(growing::row_over_sofa(3)) == 0);
}

TEST_CASE("A target is where its thing, point, corner or region is") {
    wall::Project project = growing::row_over_sofa(0);
    scenes::add_fixture(project, wall::FixtureType::window, WallRect::at({4400, 900}, {500, 700}));
    const wall::Room& room = project.room;
    CHECK(place_of(room, wall::FurnitureId{"sofa"}) == WallRect::at({700, 0}, {2000, 800}));
    CHECK(place_of(room, wall::FixtureId{"window"}) == WallRect::at({4400, 900}, {500, 700}));
    CHECK(place_of(room, WallPoint{10, 20}) == WallRect{{10, 20}, {10, 20}});
    CHECK(place_of(room, WallRect{{1, 2}, {3, 4}}) == WallRect{{1, 2}, {3, 4}});
    CHECK(place_of(room, wall::WallCorner::top_right)->min == WallPoint{5000, 2600});
    CHECK(place_of(room, wall::WallCorner::bottom_left)->max == WallPoint{0, 0});
    CHECK(place_of(room, wall::WallCorner::top_left)->max == WallPoint{0, 2600});
    CHECK(place_of(room, wall::WallCorner::bottom_right)->max == WallPoint{5000, 0});
    CHECK_FALSE(place_of(room, wall::FurnitureId{"boat"}));
    CHECK_FALSE(place_of(room, wall::FixtureId{"sofa"}));
}
