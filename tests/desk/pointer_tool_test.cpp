#include "desk/pointer_tool.h"

#include "desk/command.h"
#include "desk/hand.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;

namespace {

using Ids = std::vector<wall::PieceId>;

/// Kelp and Dune far apart, Moss hung, Fern pinned, Tide waiting.
Hand hand() {
    wall::Project project = scenes::wall_of(6000, 2400);
    scenes::add_piece(project, "kelp", {300, 1300}, {400, 300});
    scenes::add_piece(project, "dune", {2000, 1000}, {200, 500});
    scenes::add_hung(project, "moss", {3400, 1250}, {300, 333});
    scenes::add_piece(project, "fern", {4800, 1111}, {300, 317}).pinned = true;
    scenes::add_waiting(project, "tide", {300, 400});
    Hand result{Session(project)};
    result.waiting = {{{"tide"}, Rect<Wall>::at({100, -700}, {300, 400})}};
    return result;
}

const Point<Wall> kKelp{500, 1450};
const Point<Wall> kDune{2100, 1250};
const Point<Wall> kMoss{3500, 1350};
const Point<Wall> kFern{4900, 1250};
const Point<Wall> kTide{250, -500};
const Point<Wall> kEmpty{1300, 2000};

}  // namespace

TEST_CASE("A click selects a piece, another one instead, and empty wall nothing") {
    Hand it = hand();
    it.click(kKelp);
    CHECK(it.selected() == Ids{{"kelp"}});
    it.click(kDune);
    CHECK(it.selected() == Ids{{"dune"}});
    it.click(kEmpty);
    CHECK(it.session.selection.empty());
    CHECK_FALSE(it.session.history().can_undo());
}

TEST_CASE("Shift and click adds and takes away") {
    Hand it = hand();
    it.click(kKelp);
    it.shift = true;
    it.click(kDune);
    CHECK(it.selected() == Ids{{"kelp"}, {"dune"}});
    it.click(kKelp);
    CHECK(it.selected() == Ids{{"dune"}});
    it.click(kEmpty);
    CHECK(it.selected() == Ids{{"dune"}});
}

TEST_CASE("A click on one of several selected pieces leaves it alone selected") {
    Hand it = hand();
    it.session.selection.set(Ids{{"kelp"}, {"dune"}});
    it.press(kDune);
    CHECK(it.selected().size() == 2);
    it.release(kDune);
    CHECK(it.selected() == Ids{{"dune"}});
}

TEST_CASE("Nothing moves until the hand has gone 4 px") {
    Hand it = hand();
    it.press(kKelp);
    it.move(kKelp + Vec<Wall>{3, 2});
    CHECK_FALSE(it.session.has_preview());
    it.move(kKelp + Vec<Wall>{3, 3});
    CHECK(it.session.has_preview());
    it.release(kKelp + Vec<Wall>{3, 3});
    CHECK(it.session.history().undo_label() == "Move Kelp");
}

TEST_CASE("A drag is shown while it lasts and is one step with its name") {
    Hand it = hand();
    it.alt = true;
    it.press(kKelp);
    it.move(kKelp + Vec<Wall>{100.04, 0});
    it.move(kKelp + Vec<Wall>{200.04, 33.33});
    CHECK(it.place("kelp").min == Point<Wall>{500, 1333});
    CHECK(it.session.kept().pieces[0].at == Point<Wall>{300, 1300});
    it.release(kKelp + Vec<Wall>{200.04, 33.33});
    CHECK(it.session.kept().pieces[0].at == Point<Wall>{500, 1333});
    CHECK(it.session.history().undo_label() == "Move Kelp");
    it.session.undo();
    CHECK_FALSE(it.session.history().can_undo());
    CHECK(it.selected() == Ids{{"kelp"}});
}

TEST_CASE("A drag that ends where it began is no step") {
    Hand it = hand();
    it.press(kKelp);
    it.move(kKelp + Vec<Wall>{200, 0});
    it.release(kKelp);
    CHECK_FALSE(it.session.history().can_undo());
}

TEST_CASE("A dragged piece rests at the gap with guides and measures, and freely with Alt") {
    Hand it = hand();
    // Dune's left edge is at 2000; Kelp is 400 wide.
    const Point<Wall> to = kKelp + Vec<Wall>{1243, -205};
    it.press(kKelp);
    it.move(to);
    CHECK(it.place("kelp").right() == 1940);
    CHECK(it.place("kelp").centre().y == 1250);
    CHECK(it.tool.showing().guides.size() == 2);
    CHECK(it.tool.showing().measures.size() >= 3);
    // The gap says its number already.
    for (const LiveMeasure& measure : it.tool.showing().measures)
        CHECK(measure.figure != "60");
    it.alt = true;
    it.move(to);
    CHECK(it.place("kelp").min == Point<Wall>{1543, 1095});
    CHECK(it.tool.showing().guides.empty());
    it.release(to);
    CHECK(it.tool.showing().measures.empty());
}

TEST_CASE("Shift keeps a drag level or plumb") {
    Hand it = hand();
    it.shift = true;
    it.drag(kKelp, kKelp + Vec<Wall>{250, 90});
    CHECK(it.place("kelp").min == Point<Wall>{550, 1300});
    it.drag(kDune, kDune + Vec<Wall>{20, 90});
    CHECK(it.place("dune").min == Point<Wall>{2000, 1090});
}

TEST_CASE("A piece of the selection carries all of it along") {
    Hand it = hand();
    it.alt = true;
    it.session.selection.set(Ids{{"kelp"}, {"dune"}});
    it.drag(kDune, kDune + Vec<Wall>{100, 50});
    CHECK(it.place("kelp").min == Point<Wall>{400, 1350});
    CHECK(it.place("dune").min == Point<Wall>{2100, 1050});
    CHECK(it.session.history().undo_label() == "Move 2 pieces");
    CHECK(it.selected().size() == 2);
}

TEST_CASE("Several pieces snap by their bounds") {
    Hand it = hand();
    it.session.selection.set(Ids{{"kelp"}, {"dune"}});
    // Bounds from 1000 to 1600: their centre comes to the centre line at 1500.
    it.drag(kKelp, kKelp + Vec<Wall>{313, 195});
    CHECK(it.place("kelp").min.y == 1500);
    CHECK(it.place("dune").min.y == 1200);
}

TEST_CASE("Hung and pinned pieces stay, and a notice says why and what to do") {
    Hand it = hand();
    it.drag(kMoss, kMoss + Vec<Wall>{100, 0});
    CHECK(it.place("moss").min == Point<Wall>{3400, 1250});
    CHECK(it.notice() == "Moss hangs already; call it planned to move it");
    CHECK(it.session.notice->is_problem);
    it.drag(kFern, kFern + Vec<Wall>{100, 0});
    CHECK(it.notice() == "Fern is pinned; unpin it to move it");
    CHECK_FALSE(it.session.history().can_undo());
}

TEST_CASE("Of several pieces the fixed stay, the others move, and a notice says so") {
    Hand it = hand();
    it.alt = true;
    it.session.selection.set(Ids{{"kelp"}, {"moss"}});
    it.drag(kMoss, kMoss + Vec<Wall>{100, 0});
    CHECK(it.place("moss").min == Point<Wall>{3400, 1250});
    CHECK(it.place("kelp").min == Point<Wall>{400, 1300});
    CHECK(it.notice() == "Moss hangs already; call it planned to move it. The others move.");
    CHECK_FALSE(it.session.notice->is_problem);
    it.session.selection.set(Ids{{"moss"}, {"fern"}});
    it.drag(kMoss, kMoss + Vec<Wall>{100, 0});
    CHECK(it.notice().substr(0, 8) == "2 pieces");
}

TEST_CASE("The next drag takes the notice of the last away") {
    Hand it = hand();
    it.drag(kMoss, kMoss + Vec<Wall>{100, 0});
    it.drag(kKelp, kKelp + Vec<Wall>{100, 0});
    CHECK(it.notice().empty());
}

TEST_CASE("A waiting piece is placed once its centre is above the floor") {
    Hand it = hand();
    it.press(kTide);
    it.move(kTide + Vec<Wall>{900, 100});
    CHECK(it.piece("tide").state == wall::PieceState::waiting);
    CHECK(it.tool.showing().off_wall.size() == 1);
    CHECK(it.tool.showing().words == "Drag it up onto the wall");
    it.move(kTide + Vec<Wall>{900, 1900});
    CHECK(it.piece("tide").state == wall::PieceState::planned);
    CHECK(it.tool.showing().off_wall.empty());
    it.release(kTide + Vec<Wall>{900, 1900});
    CHECK(it.session.history().undo_label() == "Hang Tide on the wall");
    CHECK(it.session.kept().pieces[4].at.has_value());
}

TEST_CASE("A waiting piece let go on the floor or far beside the wall still waits") {
    Hand it = hand();
    it.press(kTide);
    it.move(kTide + Vec<Wall>{900, 1900});
    it.move(kTide + Vec<Wall>{900, 50});
    it.release(kTide + Vec<Wall>{900, 50});
    it.drag(kTide, kTide + Vec<Wall>{-700, 1900});
    CHECK(it.piece("tide").state == wall::PieceState::waiting);
    CHECK_FALSE(it.session.history().can_undo());
}

TEST_CASE("A piece dropped with its centre below the floor is taken down") {
    Hand it = hand();
    const Point<Wall> down = kKelp + Vec<Wall>{0, -1500};
    it.press(kKelp);
    it.move(down);
    CHECK(it.piece("kelp").state == wall::PieceState::waiting);
    CHECK(it.tool.showing().words == "Drop it here to take it off the wall");
    it.release(down);
    CHECK(it.piece("kelp").state == wall::PieceState::waiting);
    CHECK(it.session.history().undo_label() == "Take Kelp down");
}

TEST_CASE("Who drags a placed piece leaves waiting ones of the selection on the floor") {
    Hand it = hand();
    it.session.selection.set(Ids{{"kelp"}, {"tide"}});
    it.drag(kKelp, kKelp + Vec<Wall>{100, 700});
    CHECK(it.piece("tide").state == wall::PieceState::waiting);
    CHECK(it.session.history().undo_label() == "Move Kelp");
}

TEST_CASE("Escape brings everything back without a step") {
    Hand it = hand();
    const wall::Project before = it.session.kept();
    it.press(kKelp);
    it.move(kKelp + Vec<Wall>{200, 0});
    CHECK(it.tool.is_busy());
    it.tool.cancel(it.session);
    CHECK_FALSE(it.tool.is_busy());
    CHECK(it.session.project() == before);
    it.release(kKelp + Vec<Wall>{200, 0});
    CHECK_FALSE(it.session.history().can_undo());
}

TEST_CASE("A band selects what it touches, adds with shift, and Escape undoes it") {
    Hand it = hand();
    it.press({1200, 1900});
    it.move({690, 1500});
    CHECK(it.tool.showing().band == Rect<Wall>{{690, 1500}, {1200, 1900}});
    CHECK(it.selected() == Ids{{"kelp"}});
    it.release({690, 1500});
    CHECK_FALSE(it.tool.showing().band.has_value());
    it.shift = true;
    it.drag({1900, 2000}, {2050, 1400});
    CHECK(it.selected() == Ids{{"kelp"}, {"dune"}});
    it.shift = false;
    it.press({1900, 2000});
    it.move({1800, 1900});
    CHECK(it.selected().empty());
    it.tool.cancel(it.session);
    CHECK(it.selected() == Ids{{"kelp"}, {"dune"}});
}

TEST_CASE("Hovering says what would be taken and what the hand can do") {
    Hand it = hand();
    it.move(kKelp);
    CHECK(it.tool.showing().hovered == Thing{wall::PieceId{"kelp"}});
    CHECK(it.tool.cursor() == Cursor::move);
    it.move(kMoss);
    CHECK(it.tool.cursor() == Cursor::arrow);
    it.move(kEmpty);
    CHECK_FALSE(it.tool.showing().hovered.has_value());
    it.step = Step::room;
    it.move({6000, 2400});
    CHECK(it.tool.cursor() == Cursor::move);
}

TEST_CASE("Nudges before and after a press at the wall are steps of their own") {
    Hand it = hand();
    it.click(kKelp);
    const Command& nudge = command(CommandId::nudge_right);
    nudge.run(it.session);
    it.click(kDune);
    it.click(kKelp);
    nudge.run(it.session);
    it.session.undo();
    CHECK(it.place("kelp").left() == 301);
}
