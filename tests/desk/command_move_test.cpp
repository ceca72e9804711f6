#include "desk/command.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;
using namespace wallwright::scenes;
using wall::PieceId;
using Point = geometry::Point<geometry::Wall>;

namespace {

const PieceId kKelp{"kelp"};
const PieceId kDune{"dune"};

wall::Project row() {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_piece(project, "dune", {1400, 1310}, {300, 400});
    return project;
}

Session with(wall::Project project, const std::vector<PieceId>& selected) {
    Session session(std::move(project));
    session.selection.set(selected);
    return session;
}

void run(Session& session, CommandId id) {
    REQUIRE(command(id).hindrance(session) == "");
    command(id).run(session);
}

Point at(const Session& session, const PieceId& id) {
    return wall::find(session.kept(), id)->at.value();
}

std::string step(const Session& session) {
    return session.history().undo_label();
}

}  // namespace

TEST_CASE("Arrows move a piece by 1 mm and with Shift by 10, and a held key is one step") {
    Session session = with(row(), {kKelp});
    run(session, CommandId::nudge_left);
    run(session, CommandId::nudge_up);
    run(session, CommandId::nudge_up_far);
    CHECK(at(session, kKelp) == Point{999, 1311});
    CHECK(step(session) == "Move Kelp");
    run(session, CommandId::nudge_right_far);
    run(session, CommandId::nudge_down);
    run(session, CommandId::nudge_down_far);
    run(session, CommandId::nudge_left_far);
    CHECK(at(session, kKelp) == Point{999, 1300});
    run(session, CommandId::undo);
    CHECK(session.kept() == row());
}

TEST_CASE("Nudges of another piece are another step") {
    Session session = with(row(), {kKelp});
    run(session, CommandId::nudge_right);
    session.selection.set(Thing(kDune));
    run(session, CommandId::nudge_right);
    run(session, CommandId::undo);
    CHECK(at(session, kKelp) == Point{1001, 1300});
    CHECK(at(session, kDune) == Point{1400, 1310});
}

TEST_CASE("In inches a nudge is 1/16 and with Shift 1/2 in") {
    wall::Project project = row();
    project.unit = units::LengthUnit::inch;
    Session session = with(project, {kKelp});
    run(session, CommandId::nudge_right);
    CHECK(at(session, kKelp).x == Approx(1001.5875));
    run(session, CommandId::nudge_up_far);
    CHECK(at(session, kKelp).y == Approx(1312.7));
}

TEST_CASE("Sixteen nudges of 1/16 in are an inch, and as many back lead to where they began") {
    wall::Project project = row();
    project.unit = units::LengthUnit::inch;
    project.pieces[0].at = Point{1016, 1320.8};  // 40 and 52 in
    project.pieces[1].at = Point{1400, 1310};    // on no whole 1/16 in
    Session session = with(project, {kKelp, kDune});
    for (int i = 0; i < 16; ++i) {
        run(session, CommandId::nudge_right);
        run(session, CommandId::nudge_up);
    }
    CHECK(at(session, kKelp) == Point{1041.4, 1346.2});
    CHECK(at(session, kDune).x == Approx(1425.4).margin(1e-9));
    CHECK(at(session, kDune).y == Approx(1335.4).margin(1e-9));
    for (int i = 0; i < 16; ++i) {
        run(session, CommandId::nudge_left);
        run(session, CommandId::nudge_down);
    }
    CHECK(session.kept() == project);
}

TEST_CASE("After the end of a burst a nudge is a step of its own") {
    Session session = with(row(), {kKelp});
    run(session, CommandId::nudge_right);
    session.end_burst();
    run(session, CommandId::nudge_right);
    run(session, CommandId::undo);
    CHECK(at(session, kKelp) == Point{1001, 1300});
}
