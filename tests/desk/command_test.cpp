#include "desk/command.h"

#include "spacing/group.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace wallwright;
using namespace wallwright::desk;
using namespace wallwright::scenes;
using geometry::Wall;
using wall::PieceId;
using wall::PieceState;
using Point = geometry::Point<Wall>;

namespace {

/// Kelp, Dune and Gull in a row, Tide on the floor, a sofa and a socket.
wall::Project row() {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_piece(project, "dune", {1400, 1310}, {300, 400});
    add_piece(project, "gull", {1770, 1290}, {300, 400});
    add_waiting(project, "tide", {200, 300});
    add_furniture(project, wall::FurnitureType::sofa, {{900, 0}, {2100, 800}});
    add_fixture(project, wall::FixtureType::socket, {{300, 300}, {380, 380}});
    return project;
}

/// The same pieces, each higher than the one left of it.
wall::Project stair() {
    wall::Project project = row();
    project.pieces[0].at = Point{1000, 1000};
    project.pieces[1].at = Point{1400, 1450};
    project.pieces[2].at = Point{1770, 1900};
    return project;
}

const PieceId kKelp{"kelp"};
const PieceId kDune{"dune"};
const PieceId kGull{"gull"};
const PieceId kTide{"tide"};

Session with(wall::Project project, const std::vector<PieceId>& selected = {}) {
    Session session(std::move(project));
    session.selection.set(selected);
    return session;
}

void run(Session& session, CommandId id) {
    INFO(command(id).name);
    REQUIRE(command(id).hindrance(session) == "");
    command(id).run(session);
}

Point at(const Session& session, const PieceId& id) {
    return wall::find(session.kept(), id)->at.value();
}

std::string step(const Session& session) {
    return session.history().undo_label();
}

std::string hindrance(CommandId id, const Session& session) {
    return command(id).hindrance(session);
}

const wall::Piece& piece(const Session& session, const PieceId& id) {
    return *wall::find(session.kept(), id);
}

}  // namespace

TEST_CASE("Every command stands once with its name, its help and a key of its own") {
    std::set<std::string_view> names;
    std::set<std::string_view> keys;
    for (const Command& one : all_commands()) {
        INFO(one.name);
        CHECK(&command(one.id) == &one);
        CHECK(names.insert(one.name).second);
        CHECK(one.help.ends_with('.'));
        if (one.key.empty())
            continue;
        CHECK(keys.insert(one.key).second);
        CHECK(command_for_key(one.key) == &one);
    }
    CHECK(command_for_key("") == nullptr);
    CHECK(command_for_key("Ctrl+F13") == nullptr);
}

TEST_CASE("On a bare wall every command says what is missing and changes nothing") {
    for (const Command& one : all_commands()) {
        INFO(one.name);
        Session session = with(wall_of(3600, 2400));
        const std::string why = one.hindrance(session);
        CHECK(why != "");
        one.run(session);
        REQUIRE(session.notice.has_value());
        CHECK_FALSE(session.notice->is_problem);
        CHECK(session.notice->text == why + ".");
        CHECK_FALSE(session.history().can_undo());
    }
}

TEST_CASE("Undo and redo walk along the steps") {
    Session session = with(row(), {kKelp});
    CHECK(hindrance(CommandId::undo, session) == "There is nothing to undo");
    run(session, CommandId::nudge_right);
    run(session, CommandId::undo);
    CHECK(session.kept() == row());
    run(session, CommandId::redo);
    CHECK(at(session, kKelp) == Point{1001, 1300});
    CHECK(hindrance(CommandId::redo, session) == "There is nothing to redo");
}

TEST_CASE("Pieces are selected from left to right, then those on the floor, round and round") {
    Session session = with(row());
    std::vector<std::string> order;
    for (int i = 0; i < 5; ++i) {
        run(session, CommandId::select_next);
        order.push_back(session.selection.one_piece().value().text);
    }
    CHECK(order == std::vector<std::string>{"kelp", "dune", "gull", "tide", "kelp"});
    run(session, CommandId::select_previous);
    CHECK(session.selection.one_piece() == kTide);
    session.selection.clear();
    run(session, CommandId::select_previous);
    CHECK(session.selection.one_piece() == kTide);
}

TEST_CASE("All pieces are selected, or nothing, and no step comes of it") {
    Session session = with(row());
    run(session, CommandId::select_all);
    CHECK(session.selection.pieces().size() == 4);
    session.pointed_out = geometry::Rect<Wall>{{0, 0}, {1, 1}};
    run(session, CommandId::select_nothing);
    CHECK(session.selection.empty());
    CHECK_FALSE(session.pointed_out.has_value());
    CHECK_FALSE(session.history().can_undo());
}

TEST_CASE("Of a mixed selection what waits on the floor stays there when the rest moves") {
    Session session = with(row(), {kTide, kKelp, kDune});
    run(session, CommandId::nudge_up);
    CHECK(step(session) == "Move 2 pieces");
    CHECK(piece(session, kTide).state == PieceState::waiting);
    session.selection.set(Thing(kTide));
    CHECK(hindrance(CommandId::nudge_up, session) == "Put it on the wall first");
}

TEST_CASE("Furniture and fixtures are moved and removed like pieces") {
    Session session = with(row());
    session.selection.set(Thing(wall::FurnitureId{"sofa"}));
    run(session, CommandId::nudge_right_far);
    CHECK(session.kept().room.furniture.front().place.left() == 910);
    CHECK(step(session) == "Move the sofa");
    run(session, CommandId::remove);
    CHECK(session.kept().room.furniture.empty());
    CHECK(step(session) == "Remove the sofa");
    CHECK(session.selection.empty());
    session.selection.set(Thing(wall::FixtureId{"socket"}));
    run(session, CommandId::nudge_up);
    CHECK(session.kept().room.fixtures.front().place.bottom() == 301);
    run(session, CommandId::remove);
    CHECK(session.kept().room.fixtures.empty());
    CHECK(hindrance(CommandId::turn, session) == "Select a piece first");
}

TEST_CASE("What hangs or is pinned is not moved, and the reason names it") {
    wall::Project project = row();
    project.pieces[0].state = PieceState::hung;
    project.pieces[1].pinned = true;
    Session session = with(project, {kGull, kKelp});
    const std::string hangs = "Kelp hangs already; call it planned to move it";
    CHECK(hindrance(CommandId::nudge_left, session) == hangs);
    CHECK(hindrance(CommandId::turn, session) == hangs);
    CHECK(hindrance(CommandId::swap, session) == hangs);
    CHECK(hindrance(CommandId::centre_group, session) == hangs);
    session.selection.set(Thing(kDune));
    CHECK(hindrance(CommandId::nudge_left, session) == "Dune is pinned; unpin it to move it");
    session.selection.set({kKelp, kDune});
    CHECK(hindrance(CommandId::align_top, session) ==
          "None of them may move, since they hang already or are pinned");
}

TEST_CASE("Even gaps are a step, and the notice gives the gap") {
    Session session = with(row());
    run(session, CommandId::even_gaps);
    CHECK(step(session) == "Even the gaps");
    const double first = at(session, kDune).x - at(session, kKelp).x - 300;
    const double second = at(session, kGull).x - at(session, kDune).x - 300;
    CHECK(first == Approx(60).margin(0.02));
    CHECK(second == Approx(60).margin(0.02));
    REQUIRE(session.notice.has_value());
    CHECK_FALSE(session.notice->is_problem);
    CHECK(session.notice->text == "Every gap between neighbours is 60 mm.");
}

TEST_CASE("A gap that cannot be made even is told with its reason") {
    wall::Project project = row();
    project.pieces[0].state = PieceState::hung;
    project.pieces[1].state = PieceState::hung;
    Session session = with(project);
    run(session, CommandId::even_gaps);
    REQUIRE(session.notice.has_value());
    CHECK(session.notice->is_problem);
    CHECK(session.notice->text.starts_with("The gap between Kelp and Dune comes out at 100 mm: "));
    CHECK(at(session, kGull).x == Approx(1760).margin(0.02));
}

TEST_CASE("Where nothing may move there are no gaps to even") {
    wall::Project project = row();
    for (wall::Piece& one : project.pieces)
        if (one.at)
            one.state = PieceState::hung;
    CHECK(hindrance(CommandId::even_gaps, with(project)) ==
          "No piece may move, since all hang already or are pinned");
}

TEST_CASE("A group is centred on the centre line as one") {
    Session session = with(row(), {kDune});
    run(session, CommandId::centre_group);
    // From 1290 to 1710 high: the middle is on 1500 already, so Gull goes lower first.
    CHECK(session.kept() == row());
    run(session, CommandId::nudge_up_far);
    run(session, CommandId::centre_group);
    CHECK(step(session) == "Centre the group on the centre line");
    CHECK(at(session, kKelp) == Point{1000, 1295});
    CHECK(at(session, kDune) == Point{1400, 1315});
    CHECK(at(session, kGull) == Point{1770, 1285});
}

TEST_CASE("Without a selection every group is centred, and one that hangs stays and is named") {
    wall::Project project = row();
    add_hung(project, "shell", {2800, 1000}, {300, 400});
    add_piece(project, "boat", {200, 1000}, {300, 400});
    Session session = with(project);
    run(session, CommandId::centre_group);
    CHECK(step(session) == "Centre the groups");
    CHECK(at(session, {"boat"}) == Point{200, 1300});
    CHECK(at(session, {"shell"}) == Point{2800, 1000});
    REQUIRE(session.notice.has_value());
    CHECK(session.notice->text ==
          "One group stays where it is: Shell hangs already; call it planned to move it.");
}

TEST_CASE("A piece is turned, also one on the floor") {
    Session session = with(row(), {kKelp});
    run(session, CommandId::turn);
    CHECK(step(session) == "Turn Kelp");
    CHECK(at(session, kKelp) == Point{950, 1350});
    session.selection.set({kTide, kDune});
    run(session, CommandId::turn);
    CHECK(step(session) == "Turn 2 pieces");
    CHECK(piece(session, kTide).turned);
}

TEST_CASE("Two pieces swap places, one of which may wait") {
    Session session = with(row(), {kKelp, kDune});
    run(session, CommandId::swap);
    CHECK(step(session) == "Swap Kelp and Dune");
    CHECK(at(session, kKelp) == Point{1400, 1310});
    session.selection.set({kGull, kTide});
    run(session, CommandId::swap);
    CHECK(piece(session, kGull).state == PieceState::waiting);
    session.selection.set(Thing(kGull));
    CHECK(hindrance(CommandId::swap, session) == "Select two pieces first");
}

TEST_CASE("Pin and unpin, hung and planned take turns") {
    Session session = with(row(), {kKelp, kDune});
    run(session, CommandId::pin);
    CHECK(step(session) == "Pin 2 pieces");
    CHECK(piece(session, kDune).pinned);
    run(session, CommandId::pin);
    CHECK(step(session) == "Unpin 2 pieces");
    run(session, CommandId::hang);
    CHECK(step(session) == "Call 2 pieces hung");
    CHECK(hindrance(CommandId::pin, session) == "What hangs already stays where it is anyway");
    run(session, CommandId::hang);
    CHECK(step(session) == "Call 2 pieces planned");
    session.selection.set(Thing(kTide));
    CHECK(hindrance(CommandId::pin, session) == "Put it on the wall first");
    CHECK(hindrance(CommandId::hang, session) == "Put it on the wall first");
}

TEST_CASE("What is taken down waits on the floor") {
    Session session = with(row(), {kKelp});
    run(session, CommandId::take_down);
    CHECK(step(session) == "Take Kelp down");
    CHECK(piece(session, kKelp).state == PieceState::waiting);
    CHECK(hindrance(CommandId::take_down, session) == "It waits on the floor already");
}

TEST_CASE("Copies stand beside the originals and are selected") {
    Session session = with(row(), {kKelp, kDune, kGull});
    run(session, CommandId::duplicate);
    CHECK(step(session) == "Duplicate 3 pieces");
    const std::vector<PieceId> made = session.selection.pieces();
    REQUIRE(made.size() == 3);
    CHECK(at(session, made[0]) == Point{2130, 1300});
    session.selection.set(Thing(made[0]));
    run(session, CommandId::remove);
    CHECK(step(session) == "Remove Kelp");
    CHECK(session.kept().pieces.size() == 6);
}

TEST_CASE("Edges and middles are lined up") {
    const std::vector<PieceId> all{kKelp, kDune, kGull};
    const auto after = [&all](CommandId id, const wall::Project& project) {
        Session session = with(project, all);
        run(session, id);
        CHECK(step(session).find("3 pieces") != std::string::npos);
        return at(session, kKelp);
    };
    CHECK(after(CommandId::align_top, row()) == Point{1000, 1310});
    CHECK(after(CommandId::align_bottom, row()) == Point{1000, 1290});
    CHECK(after(CommandId::align_right, stair()) == Point{1770, 1000});
    CHECK(after(CommandId::align_centre_x, stair()) == Point{1385, 1000});
    CHECK(after(CommandId::align_left, stair()) == Point{1000, 1000});
    Session session = with(row(), all);
    run(session, CommandId::align_centre_y);
    CHECK(at(session, kGull) == Point{1770, 1300});
    session.selection.set({kKelp, kTide});
    CHECK(hindrance(CommandId::align_left, session) == "Select two pieces on the wall first");
}

TEST_CASE("Lining up does not pile pieces of a row on each other") {
    Session session = with(row(), {kKelp, kDune, kGull});
    command(CommandId::align_left).run(session);
    CHECK(session.kept() == row());
    REQUIRE(session.notice);
    CHECK(session.notice->text ==
          "That would put one piece over another; select those of one row or one column.");
}

TEST_CASE("A group is centred over the furniture below it, and over nothing else") {
    wall::Project project = row();
    project.room.furniture.clear();
    CHECK(hindrance(CommandId::centre_over, with(project, {})) ==
          "No furniture stands below the group");
    add_furniture(project, wall::FurnitureType::lamp, {{1200, 0}, {1500, 900}});
    CHECK(hindrance(CommandId::centre_over, with(project, {})) ==
          "No furniture stands below the group");
    add_furniture(project, wall::FurnitureType::sofa, {{900, 0}, {2900, 800}});
    Session over = with(project, {});
    run(over, CommandId::centre_over);
    const auto groups = spacing::find_groups(wall::placed_pieces(over.kept()), 200);
    REQUIRE(groups.size() == 1);
    CHECK(groups.front().bounds.centre().x == Approx(1900));
    CHECK(step(over) == "Centre over the furniture");
}

TEST_CASE("Three pieces are spread at equal gaps") {
    Session session = with(row(), {kKelp, kDune, kGull});
    run(session, CommandId::distribute_across);
    CHECK(step(session) == "Spread 3 pieces evenly across");
    CHECK(at(session, kDune).x == Approx(1385));
    CHECK(hindrance(CommandId::distribute_up, with(row(), {kKelp, kDune})) ==
          "Select three pieces on the wall first");
    wall::Project tower = wall_of(3600, 2400);
    add_piece(tower, "kelp", {1000, 100}, {300, 400});
    add_piece(tower, "dune", {1000, 700}, {300, 400});
    add_piece(tower, "gull", {1000, 1800}, {300, 400});
    Session high = with(tower, {kKelp, kDune, kGull});
    run(high, CommandId::distribute_up);
    CHECK(at(high, kDune).y == Approx(950));
}
