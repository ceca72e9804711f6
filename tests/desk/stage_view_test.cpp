#include "desk/stage_view.h"

#include "edits/edit.h"
#include "growing.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;

namespace {

/// Dune goes up first, Tide then.
wall::Project staged_wall() {
    wall::Project project = growing_wall();
    const auto plan = [&project](const char* id, double x, int stage) {
        for (wall::Piece& piece : project.pieces)
            if (piece.id.text == id) {
                piece.state = wall::PieceState::planned;
                piece.at = geometry::Point<geometry::Wall>{x, 1300};
                piece.stage = stage;
            }
    };
    plan("dune", 1720, 1);
    plan("tide", 2180, 2);
    return project;
}

bool waits(const wall::Project& project, const char* id) {
    return wall::find(project, wall::PieceId{id})->state == wall::PieceState::waiting;
}

}  // namespace

TEST_CASE("A stage shows what is on the wall after it, and the last one is the wall itself") {
    Session session(staged_wall());
    StageView view;
    CHECK(StageView::last(session) == 2);
    CHECK(view.at(session) == 2);
    view.show(session, 0);
    CHECK(waits(session.project(), "dune"));
    CHECK(waits(session.project(), "tide"));
    view.show(session, 1);
    CHECK_FALSE(waits(session.project(), "dune"));
    CHECK(waits(session.project(), "tide"));
    view.show(session, 2);
    CHECK(session.project() == session.kept());
    CHECK_FALSE(session.has_preview());
}

TEST_CASE("Looking at the stages leaves no trace in the wall, its steps or what is to be saved") {
    Session session(staged_wall());
    const wall::Project before = session.kept();
    const auto version = session.kept_version();
    StageView view;
    for (const int stage : {0, 1, 2, 1, 0, -5, 99, 1})
        view.show(session, stage);
    view.leave(session);
    CHECK(session.project() == before);
    CHECK(session.kept() == before);
    CHECK(session.kept_version() == version);
    CHECK_FALSE(session.history().can_undo());
}

TEST_CASE("What changes the wall ends the view, and changes the wall itself") {
    Session session(staged_wall());
    StageView view;
    view.show(session, 0);
    session.apply("Change the wanted gap", edits::set_gap(session.kept(), 70));
    view.follow(session, 0);
    CHECK_FALSE(view.is_shown());
    CHECK_FALSE(waits(session.project(), "dune"));
}

TEST_CASE("A preview of something else is not taken away with the view") {
    Session session(staged_wall());
    StageView view;
    view.show(session, 0);
    session.preview(edits::set_gap(session.kept(), 70));
    view.leave(session);
    CHECK(session.has_preview());
    CHECK(session.project().style.gap == 70);
}

TEST_CASE("What is selected is let go of for the view, and selecting ends it") {
    Session session(staged_wall());
    session.selection.set(wall::PieceId{"tide"});
    StageView view;
    view.show(session, 0);
    CHECK(session.selection.empty());
    session.selection.set(wall::PieceId{"kelp"});
    view.follow(session, 0);
    CHECK_FALSE(view.is_shown());
    CHECK_FALSE(session.has_preview());
    CHECK(session.selection.one_piece() == wall::PieceId{"kelp"});
}

TEST_CASE("Played, the wall grows a stage a second from today on, and then it stops") {
    Session session(staged_wall());
    StageView view;
    view.play(session, 100);
    CHECK(view.at(session) == 0);
    CHECK(*view.due_in(100.25) == Approx(0.75));
    view.follow(session, 100.9);
    CHECK(view.at(session) == 0);
    view.follow(session, 101);
    CHECK(view.at(session) == 1);
    CHECK(view.is_playing());
    view.follow(session, 102);
    CHECK(view.at(session) == 2);
    CHECK_FALSE(view.is_playing());
    CHECK_FALSE(view.due_in(102));
    CHECK_FALSE(session.has_preview());
}

TEST_CASE("Choosing a stage ends the play") {
    Session session(staged_wall());
    StageView view;
    view.play(session, 0);
    view.show(session, 1);
    CHECK_FALSE(view.is_playing());
    view.follow(session, 50);
    CHECK(view.at(session) == 1);
}

TEST_CASE("A wall without stages has nothing to show or play") {
    Session session(growing_wall());
    StageView view;
    view.play(session, 0);
    view.show(session, 1);
    CHECK_FALSE(view.is_playing());
    CHECK_FALSE(session.has_preview());
}

TEST_CASE("Each stage tells what it adds and how far the target is then") {
    const Session session(staged_wall());
    StageView view;
    const auto& facts = view.facts(session, nullptr);
    REQUIRE(facts.size() == 3);
    CHECK(facts[0].adds.empty());
    CHECK(facts[1].adds == std::vector{wall::PieceId{"dune"}});
    CHECK(facts[2].adds == std::vector{wall::PieceId{"tide"}});
    CHECK(*facts[0].to_target == Approx(3200 - 1660));
    CHECK(*facts[2].to_target == Approx(3200 - 2480));
    CHECK_FALSE(facts[1].finished);
    for (const StageFacts& one : facts) {
        CHECK(one.score > 0);
        CHECK(one.score <= 100);
    }
}

TEST_CASE("How finished a stage looks is known as long as it is as the search left it") {
    wall::Project today = growing_wall();
    const arrange::Task task =
        arrange::task_of(today, scenes::small_catalogue(), arrange::Free::waiting_alone);
    arrange::GrowOptions options;
    options.rounds = 2;
    const arrange::Growth growth = arrange::grow(
        task, *arrange::place_of(today.room, *today.target), options, [](double) { return true; });
    REQUIRE(growth.stages.size() == 2);
    Session session(today);
    session.apply("Grow", arrange::with_growth(today, task, growth));
    StageView view;
    for (std::size_t i = 0; i < 2; ++i) {
        const StageFacts& facts = view.facts(session, &growth).at(i + 1);
        REQUIRE(facts.finished);
        CHECK(*facts.finished == growth.stages[i].finished);
        CHECK(facts.score == Approx(growth.stages[i].score.total).margin(0.1));
        CHECK(*facts.to_target == Approx(growth.stages[i].to_target).margin(0.1));
    }
    const wall::PieceId last = growth.stages[1].adds.at(0);
    const auto at = *wall::find(session.kept(), last)->at;
    const edits::Move move{last, {at.x, at.y - 5}};
    session.apply("Move", edits::place(session.kept(), {&move, 1}));
    CHECK(view.facts(session, &growth).at(1).finished);
    CHECK_FALSE(view.facts(session, &growth).at(2).finished);
}
