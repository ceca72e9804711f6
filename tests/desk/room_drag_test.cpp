#include "desk/room_drag.h"

#include "desk/hand.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;

namespace {

Hand furnished() {
    wall::Project project = scenes::wall_of(4000, 2400);
    scenes::add_furniture(project, wall::FurnitureType::sofa,
                          Rect<Wall>::at({1000, 0}, {1900, 800}));
    scenes::add_fixture(project, wall::FixtureType::light_switch,
                        Rect<Wall>::at({3500, 1050}, {80, 80}));
    return {Session(project), Step::room};
}

Rect<Wall> sofa(const Hand& hand) {
    return hand.session.project().room.furniture[0].place;
}

}  // namespace

TEST_CASE("Furniture and fixtures are dragged, and rest on the floor") {
    Hand it = furnished();
    it.drag({1500, 400}, {1203, 405});
    CHECK(sofa(it) == Rect<Wall>::at({703, 0}, {1900, 800}));
    CHECK(it.session.history().undo_label() == "Move the sofa");
    it.drag({3540, 1090}, {3440, 1190});
    CHECK(it.session.project().room.fixtures[0].place == Rect<Wall>::at({3400, 1150}, {80, 80}));
    CHECK(it.session.history().undo_label() == "Move the switch");
}

TEST_CASE("What stands on the floor is only shifted along it") {
    Hand it = furnished();
    it.drag({1500, 400}, {1203, 900});
    CHECK(sofa(it).bottom() == 0);
    CHECK(sofa(it).left() < 1000);
}

TEST_CASE("A handle resizes the sides it is on and no others") {
    Hand it = furnished();
    it.click({1500, 400});
    it.move({2900, 400});
    CHECK(it.tool.cursor() == Cursor::resize_across);
    it.drag({2900, 400}, {3100, 700});
    CHECK(sofa(it) == Rect<Wall>{{1000, 0}, {3100, 800}});
    it.drag({1000, 800}, {900, 850});
    CHECK(sofa(it) == Rect<Wall>{{900, 0}, {3100, 850}});
    CHECK(it.session.history().undo_label() == "Resize the sofa");
}

TEST_CASE("Resizing shows the size and leaves at least 20 mm") {
    Hand it = furnished();
    it.click({1500, 400});
    it.press({2900, 400});
    it.move({500, 400});
    CHECK(sofa(it) == Rect<Wall>{{1000, 0}, {1020, 800}});
    REQUIRE(it.tool.showing().measures.size() == 2);
    CHECK(it.tool.showing().measures[0].figure == "20");
    CHECK(it.tool.showing().measures[1].figure == "800");
}

TEST_CASE("A corner of the outline is dragged plumb with its neighbour") {
    Hand it = furnished();
    it.drag({4000, 2400}, {4004, 2150});
    CHECK(it.session.kept().room.outline.corners[2] == Point<Wall>{4000, 2150});
    CHECK(it.session.history().undo_label() == "Move a corner of the wall");
}

TEST_CASE("A corner that would cross the outline stays where it last could be") {
    Hand it = furnished();
    it.press({4000, 2400});
    it.move({3000, 2400});
    it.move({2000, -500});
    CHECK(it.notice().find("cross") != std::string::npos);
    CHECK(it.session.project().room.outline.corners[2] == Point<Wall>{3000, 2400});
    it.move({3500, 2400});
    CHECK(it.notice().empty());
}
