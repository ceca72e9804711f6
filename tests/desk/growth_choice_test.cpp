#include "desk/growth_choice.h"

#include "desk/growth_target.h"
#include "edits/edit.h"
#include "edits/room.h"
#include "growing.h"
#include "wall/find_in.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::desk;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;

namespace {

GrowthChoice small_search() {
    GrowthChoice choice;
    choice.options.rounds = 2;
    return choice;
}

void grow(GrowthChoice& choice, Session& session) {
    choice.start(session);
    wait_for([&] {
        choice.follow(session);
        return !choice.is_running();
    });
}

wall::Project without(wall::Project project, wall::PieceState state) {
    std::erase_if(project.pieces,
                  [state](const wall::Piece& piece) { return piece.state == state; });
    return project;
}

}  // namespace

TEST_CASE("A growth is one step, after which no piece waits and each new one has its stage") {
    Session session(growing_wall());
    const wall::Project before = session.kept();
    GrowthChoice choice = small_search();
    grow(choice, session);
    CHECK(session.history().undo_label() == "Grow toward Floor lamp");
    CHECK(arrange::last_stage(session.kept()) == 2);
    for (const wall::Piece& piece : session.kept().pieces)
        CHECK(piece.state != wall::PieceState::waiting);
    session.undo();
    CHECK(session.kept() == before);
    CHECK_FALSE(session.history().can_undo());
}

TEST_CASE("Pieces go up so many at a time as was wished") {
    Session session(growing_wall());
    GrowthChoice choice = small_search();
    choice.options.per_stage = 2;
    grow(choice, session);
    CHECK(arrange::last_stage(session.kept()) == 1);
}

TEST_CASE("Growing again arranges the pieces of the growth before anew") {
    Session session(growing_wall());
    GrowthChoice choice = small_search();
    grow(choice, session);
    CHECK(GrowthChoice::hindrance(session).empty());
    choice.options.per_stage = 2;
    grow(choice, session);
    CHECK(arrange::last_stage(session.kept()) == 1);
}

TEST_CASE("Growing again leaves a pinned piece where it is") {
    Session session(growing_wall());
    GrowthChoice choice = small_search();
    grow(choice, session);
    wall::Project project = session.kept();
    wall::Piece& pinned = *wall::find_in(project.pieces, {"dune"});
    pinned.pinned = true;
    REQUIRE(pinned.at);
    pinned.at = *pinned.at + geometry::Vec<Wall>{0, 30};
    const wall::Piece before = pinned;
    session.apply("Pin", project);
    grow(choice, session);
    const wall::Piece& after = *wall::find_in(session.kept().pieces, {"dune"});
    CHECK(after.at == before.at);
    CHECK(after.pinned);
    CHECK(wall::find_in(session.kept().pieces, {"tide"})->stage == 1);
}

TEST_CASE("Pieces of an earlier growth that are pinned are none that wait") {
    wall::Project project = growing_wall();
    for (wall::Piece& piece : project.pieces)
        if (piece.state == wall::PieceState::waiting) {
            piece.state = wall::PieceState::planned;
            piece.at = Point<Wall>{1720, 1300};
            piece.stage = 1;
        }
    std::erase_if(project.pieces, [](const wall::Piece& piece) { return piece.id.text == "tide"; });
    CHECK(GrowthChoice::hindrance(Session(project)).empty());
    wall::find_in(project.pieces, {"dune"})->pinned = true;
    CHECK(GrowthChoice::hindrance(Session(project)) == "No piece waits on the floor");
}

TEST_CASE("A search is given up when the wall becomes another, which a notice says") {
    Session session(growing_wall());
    GrowthChoice choice = small_search();
    choice.start(session);
    session.apply("Change the wanted gap", edits::set_gap(session.kept(), 70));
    CHECK(choice.follow(session));
    CHECK_FALSE(choice.is_running());
    CHECK(session.history().undo_label() == "Change the wanted gap");
    REQUIRE(session.notice);
    CHECK_FALSE(session.notice->is_problem);
}

TEST_CASE("A search that is stopped at once gives a growth all the same") {
    Session session(growing_wall());
    GrowthChoice choice;
    choice.options.seconds = 600;
    choice.start(session);
    choice.stop(session);
    CHECK_FALSE(choice.is_running());
    CHECK(arrange::last_stage(session.kept()) >= 1);
    if (arrange::last_stage(session.kept()) < 2) {
        REQUIRE(session.notice);
        CHECK(session.notice->text.find("Stopped early: no place yet for ") == 0);
    }
}

TEST_CASE("What hinders a growth is said in a few words") {
    CHECK(GrowthChoice::hindrance(Session(growing_wall())).empty());
    wall::Project aimless = growing_wall();
    aimless.target.reset();
    CHECK(GrowthChoice::hindrance(Session(aimless)) == "Say first toward what");
    CHECK(GrowthChoice::hindrance(Session(without(growing_wall(), wall::PieceState::waiting))) ==
          "No piece waits on the floor");
    CHECK(GrowthChoice::hindrance(Session(without(growing_wall(), wall::PieceState::hung))) ==
          "Nothing is on the wall yet from which it could grow");
}

TEST_CASE("Where no piece has room nothing changes and a notice says what to do") {
    wall::Project project = scenes::wall_of(500, 500);
    scenes::add_hung(project, "kelp", {30, 30}, {440, 440});
    scenes::add_waiting(project, "dune", {400, 400});
    project.target = wall::WallCorner::top_right;
    Session session(project);
    GrowthChoice choice = small_search();
    grow(choice, session);
    CHECK_FALSE(session.history().can_undo());
    REQUIRE(session.notice);
    CHECK(session.notice->is_problem);
}

TEST_CASE("A growth that something stops says what, and how far it is from the target") {
    wall::Project project = growing_wall();
    scenes::add_fixture(project, wall::FixtureType::window, {{1740, 0}, {2600, 2400}}).title =
        "Window 2";
    Session session(project);
    GrowthChoice choice = small_search();
    grow(choice, session);
    CHECK(arrange::last_stage(session.kept()) == 2);
    REQUIRE(session.notice);
    CHECK_FALSE(session.notice->is_problem);
    CHECK(session.notice->text ==
          "Growth stops 1540 mm before Floor lamp: Window 2 is in the way.");
}

TEST_CASE("A growth that only ran out of pieces has no notice") {
    Session session(growing_wall());
    GrowthChoice choice = small_search();
    grow(choice, session);
    CHECK_FALSE(session.notice);
}

TEST_CASE("The next press on the wall is the target when that was asked for") {
    Session session(growing_wall());
    GrowthChoice choice;
    CHECK_FALSE(choice.wants_point());
    choice.ask_for_point();
    CHECK(choice.wants_point());
    choice.take_point(session, {2000.4, 1499.7});
    CHECK_FALSE(choice.wants_point());
    CHECK(session.kept().target == wall::Target(Point<Wall>{2000, 1500}));
    CHECK(session.history().undo_label() ==
          "Aim the growth at the point 2000 mm across and 1500 mm up");
}

TEST_CASE("A point beside the wall is taken as the nearest on it") {
    Session session(growing_wall());
    GrowthChoice choice;
    choice.take_point(session, {-300, 9000});
    CHECK(session.kept().target == wall::Target(Point<Wall>{0, 2400}));
}

TEST_CASE("Things, corners and the project's own target are there to choose from, each once") {
    wall::Project project = growing_wall();
    scenes::add_fixture(project, wall::FixtureType::socket, {{100, 300}, {180, 380}});
    CHECK(possible_targets(project).size() == 6);
    project.target = Point<Wall>{1000, 1000};
    const auto targets = possible_targets(project);
    REQUIRE(targets.size() == 7);
    CHECK(targets.back() == *project.target);
}

TEST_CASE("The distance to the target is that of the nearest piece on the wall") {
    wall::Project project = growing_wall();
    CHECK(distance_to_target(project) == Approx(3200 - 1660));
    project.target = Point<Wall>{1000, 1000};
    CHECK(distance_to_target(project) == Approx(300));
    project.target = Point<Wall>{1000, 1400};
    CHECK(distance_to_target(project) == Approx(0));
    CHECK_FALSE(distance_to_target(without(project, wall::PieceState::hung)));
    project.target.reset();
    CHECK_FALSE(distance_to_target(project));
}
