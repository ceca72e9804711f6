#include "hanging/needs.h"
#include "person.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::app;
using namespace wallwright::scenes;
using desk::Step;
using geometry::Rect;
using geometry::Wall;

namespace {

/// One planned and one hung piece, and a socket.
wall::Project two_pieces() {
    wall::Project project = wall_of(3600, 2400);
    wall::Piece& kelp = add_piece(project, "kelp", {1000, 1300}, {400, 500});
    kelp.hanger.type = wall::HangerType::two_rings;
    add_hung(project, "moss", {1800, 1300}, {400, 500});
    add_fixture(project, wall::FixtureType::socket, Rect<Wall>::at({3000, 300}, {86, 86}));
    return project;
}

struct AtHanging : Person {
    explicit AtHanging(wall::Project project = two_pieces(), Step step = Step::hang)
        : Person(std::move(project)) {
        state.step = step;
        window.settle();
    }
    [[nodiscard]] const wall::Project& project() const { return state.session.project(); }
    [[nodiscard]] const wall::Piece& piece(const char* id) const {
        return *wall::find(project(), wall::PieceId{id});
    }
    void select(const char* id) {
        state.session.selection.set(wall::PieceId{id});
        window.settle();
    }
    void choose(const std::string& row, int index) {
        window.click(row);
        window.click(row + "/" + std::to_string(index));
    }
    /// Clicks a folded section open.
    void open(const char* section, const char* inside) {
        if (!window.has(inside))
            window.click(section);
        REQUIRE(window.has(inside));
    }
    /// Takes a field's words out.
    void clear(const std::string& field) {
        window.click(field);
        for (const char* key : {"Ctrl+A", "Delete", "Enter"})
            window.key(key);
    }
    [[nodiscard]] ImVec2 middle(const std::string& name) const {
        const ItemBox& box = window.item(name);
        return {(box.min.x + box.max.x) / 2, (box.min.y + box.max.y) / 2};
    }
};

}  // namespace

TEST_CASE("Each layer on the wall has a switch, and that of studs waits until they are known") {
    AtHanging at;
    at.window.click("hang/layer/marks");
    at.window.click("hang/layer/zones");
    at.window.click("hang/layer/studs");
    const desk::HangLayers without{false, true, true, false, true};
    CHECK(at.state.layers == without);
    CHECK_FALSE(at.window.has("wall/mark/1"));
    at.window.click("hang/layer/marks");
    CHECK(at.window.has("wall/mark/1"));
    wall::Project project = at.project();
    project.room.studs = wall::Studs{};
    at.state.session.apply("Studs", project);
    at.window.settle();
    at.window.click("hang/layer/studs");
    CHECK_FALSE(at.state.layers.studs);
}

TEST_CASE("A mark on the wall tells what it is once the pointer rests on it") {
    AtHanging at;
    const ImVec2 mark = at.middle("wall/mark/1");
    at.window.move_to(mark);
    at.window.rest(0.6F);
    at.window.settle();
    CHECK(at.window.has("tip"));
    at.window.move_to({mark.x + 60, mark.y + 60});
    at.window.rest(0.6F);
    at.window.settle();
    CHECK_FALSE(at.window.has("tip"));
}

TEST_CASE("A level line is proposed by a button") {
    AtHanging at;
    at.choose("hang/height", static_cast<int>(wall::DatumHeight::level_line));
    REQUIRE(at.project().datum.height == wall::DatumHeight::level_line);
    at.window.fill_in("hang/line", "90 cm");
    CHECK(at.project().datum.level_line == 900);
    const double proposed =
        hanging::proposed_level_line(at.project(), at.state.session.assessment().hangings);
    at.window.click("hang/propose-line");
    CHECK(at.project().datum.level_line == proposed);
    CHECK(at.state.session.history().undo_label() == "Propose a level line");
}

TEST_CASE("A piece that hangs is a datum, where there is one") {
    AtHanging at;
    at.choose("hang/height", static_cast<int>(wall::DatumHeight::piece));
    CHECK(at.project().datum.height == wall::DatumHeight::piece);
    CHECK(at.project().datum.piece == wall::PieceId{"moss"});
    CHECK(at.window.has("hang/piece"));
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {400, 500});
    AtHanging other(project);
    other.window.click("hang/height");
    CHECK(other.window.has("hang/height/2"));
    CHECK_FALSE(other.window.has("hang/height/3"));
}

TEST_CASE("A floor that is off level is measured at both ends") {
    AtHanging at;
    at.window.click("hang/floor");
    REQUIRE(at.project().datum.floor.has_value());
    CHECK(at.project().datum.floor->left == at.project().datum.floor->right);
    at.window.fill_in("hang/floor/left", "1000");
    at.window.fill_in("hang/floor/right", "988");
    CHECK(at.project().datum.floor == wall::EndHeights{1000, 988});
    CHECK(at.window.has("hang/floor/words"));
    at.window.click("hang/floor");
    CHECK_FALSE(at.project().datum.floor.has_value());
    CHECK_FALSE(at.window.has("hang/ceiling"));
    at.choose("hang/height", static_cast<int>(wall::DatumHeight::ceiling));
    at.window.click("hang/ceiling");
    at.window.fill_in("hang/ceiling/right", "1012");
    CHECK(at.project().datum.ceiling->right == 1012);
}

TEST_CASE("The tape's step and the level are chosen from what there is in a shop") {
    AtHanging at;
    at.open("hang/tools", "hang/ruler");
    at.choose("hang/ruler", 1);
    CHECK(at.project().style.ruler_step == 0.5);
    at.choose("hang/level", 2);
    CHECK(at.project().style.level_error == 1);
}

TEST_CASE("Packs and prices are typed, and what is to be bought is added up") {
    AtHanging at;
    at.open("hang/prices", "hang/price/cord");
    const auto needs = hanging::needs(at.project(), at.state.session.assessment().hangings);
    REQUIRE_FALSE(needs.empty());
    const std::string type = needs.front().type.text;
    at.window.fill_in("hang/pack/" + type, "3");
    at.window.fill_in("hang/price/" + type, "4,50");
    REQUIRE(at.project().stock.size() == 1);
    CHECK(at.project().stock[0].pack == 3);
    CHECK(at.project().stock[0].price == 4.5);
    at.clear("hang/pack/" + type);
    CHECK_FALSE(at.project().stock[0].pack.has_value());
    CHECK(at.project().stock[0].price == 4.5);
    at.window.fill_in("hang/price/cord", "0.80");
    CHECK(at.project().cord_price == 0.8);
    CHECK(at.window.has("hang/buy/total"));
}

TEST_CASE("What is in the drawer stays in sight when the wall does not need it") {
    wall::Project project = two_pieces();
    project.stock = {{{"strip_small"}, 6}};
    AtHanging at(project);
    CHECK(at.window.has("hang/needs/In the drawer, and not needed"));
    at.window.fill_in("hang/stock/strip_small", "4");
    CHECK(at.project().stock.front().count == 4);
}

TEST_CASE("The list of loads selects its piece") {
    AtHanging at;
    at.window.click("hang/load/B");
    CHECK(at.state.session.selection.one_piece() == wall::PieceId{"moss"});
}

TEST_CASE("The piece says what there is to mind, and shows the forces on it") {
    AtHanging at;
    at.select("kelp");
    CHECK(at.window.has("piece/forces/drawing"));
    at.window.click("piece/rough-back");
    CHECK(wall::frame_of(at.project(), at.piece("kelp")).rough_back);
    at.window.click("piece/irreplaceable");
    CHECK(at.piece("kelp").irreplaceable);
    at.choose("piece/hanger", static_cast<int>(wall::HangerType::keyholes));
    at.window.fill_in("piece/drop", "15");
    at.window.fill_in("piece/rings", "300");
    CHECK(at.piece("kelp").hanger.type == wall::HangerType::keyholes);
    CHECK(at.piece("kelp").hanger.ring_spacing == 300);
    at.open("piece/frame", "piece/frame-price");
    at.window.fill_in("piece/frame-price", "24.50");
    CHECK(wall::frame_of(at.project(), at.piece("kelp")).price == 24.5);
    at.window.click("piece/forces");
    CHECK_FALSE(at.window.has("piece/forces/drawing"));
}

TEST_CASE("What the wall is made of and its studs are said under their own heading") {
    AtHanging at(two_pieces(), Step::room);
    CHECK_FALSE(at.window.has("room/core"));
    at.open("room/behind", "room/core");
    at.choose("room/core", static_cast<int>(wall::Core::plasterboard));
    CHECK(at.project().room.core == wall::Core::plasterboard);
    at.window.click("room/studs");
    REQUIRE(at.project().room.studs.has_value());
    at.window.fill_in("room/stud-first", "150");
    at.window.fill_in("room/stud-spacing", "600");
    at.window.fill_in("room/stud-width", "38");
    CHECK(*at.project().room.studs == wall::Studs{150, 600, 38});
    at.window.fill_in("room/thickness", "95");
    CHECK(at.project().room.thickness == 95);
    at.window.click("room/studs");
    CHECK_FALSE(at.project().room.studs.has_value());
}

TEST_CASE("Conditions of the wall are switched and typed") {
    AtHanging at(two_pieces(), Step::room);
    at.open("room/conditions", "room/no-holes");
    for (const char* name : {"room/no-holes", "room/sun", "room/shakes"})
        at.window.click(name);
    const wall::Room& room = at.project().room;
    CHECK((room.no_holes && room.in_sun && room.shakes));
    at.window.fill_in("room/rail", "2100");
    CHECK(at.project().room.rail == 2100);
    at.window.fill_in("room/built", "1965");
    CHECK(at.project().room.built == 1965);
    at.window.fill_in("room/built", "65");
    CHECK(at.project().room.built == 1965);
    CHECK(at.window.has("room/built/reason"));
}

TEST_CASE("Fresh paint asks for its day, and says so when the words are none") {
    AtHanging at(two_pieces(), Step::room);
    CHECK_FALSE(at.window.has("room/painted-on"));
    at.choose("room/surface", static_cast<int>(wall::Surface::fresh_paint));
    at.window.fill_in("room/painted-on", "2026-11-25");
    REQUIRE(at.project().room.painted_on.has_value());
    CHECK(wall::text_of(*at.project().room.painted_on) == "2026-11-25");
    for (const char* none : {"25.11.2026", "2026-02-30"}) {
        at.window.fill_in("room/hangs-on", none);
        CHECK(at.window.has("room/hangs-on/reason"));
        CHECK_FALSE(at.project().hangs_on.has_value());
    }
    at.window.fill_in("room/hangs-on", "2026-12-02");
    CHECK(wall::text_of(at.project().hangs_on.value()) == "2026-12-02");
    at.clear("room/painted-on");
    CHECK_FALSE(at.project().room.painted_on.has_value());
}

TEST_CASE("A basin can be put in the wall, and a fixture on its other side") {
    AtHanging at(two_pieces(), Step::room);
    at.window.click("room/in/basin");
    REQUIRE(at.project().room.fixtures.size() == 2);
    CHECK(at.project().room.fixtures.back().type == wall::FixtureType::basin);
    at.window.click("thing/other-side");
    CHECK(at.project().room.fixtures.back().other_side);
}
