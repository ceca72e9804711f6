#include "app/actions.h"
#include "app/headless.h"
#include "app/panels/panels.h"
#include "edits/room.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::app;
using namespace wallwright::scenes;

namespace {

/// A planned and a waiting piece before the real window's parts.
class AtTheWall {
  public:
    AtTheWall() : state{desk::Session(some_wall()), {}} {
        window.on_key = [this](std::string_view key) { press_key(state, key); };
        window.frame([this](Ui& ui) { parts(ui, state); });
        window.settle();
    }

    [[nodiscard]] const wall::Piece& piece(const char* id) const {
        return *wall::find(state.session.project(), wall::PieceId{id});
    }
    [[nodiscard]] ImVec2 middle(const std::string& name) const {
        const ItemBox& box = window.item(name);
        return {(box.min.x + box.max.x) / 2, (box.min.y + box.max.y) / 2};
    }
    /// By pixels from the middle of the item.
    void drag(const std::string& name, float x, float y, std::string_view modifiers = "") {
        const ImVec2 from = middle(name);
        window.drag(from, {from.x + x, from.y + y}, modifiers);
    }

    State state;
    Headless window;

  private:
    static wall::Project some_wall() {
        wall::Project project = wall_of(3600, 2400);
        add_piece(project, "kelp", {1000, 1300}, {300, 400});
        add_waiting(project, "dune", {300, 400});
        return project;
    }
};

}  // namespace

TEST_CASE("A piece goes where the hand drags it, as one step") {
    AtTheWall at;
    const geometry::Point<geometry::Wall> before = *at.piece("kelp").at;
    at.drag("wall/kelp", 100, -40, "Alt");
    const geometry::Point<geometry::Wall> after = *at.piece("kelp").at;
    CHECK(after.x - before.x == Approx(at.state.view.mm(100)).margin(0.5));
    CHECK(after.y - before.y == Approx(at.state.view.mm(40)).margin(0.5));
    CHECK(at.state.session.history().undo_label() == "Move Kelp");
    at.window.key("Ctrl+Z");
    CHECK(*at.piece("kelp").at == before);
}

TEST_CASE("A waiting piece dragged up hangs on the wall on paper, dragged down it waits again") {
    AtTheWall at;
    at.drag("wall/dune", 250, -300);
    CHECK(at.piece("dune").state == wall::PieceState::planned);
    at.drag("wall/dune", 0, 420);
    CHECK(at.piece("dune").state == wall::PieceState::waiting);
}

TEST_CASE("Escape gives a drag up") {
    AtTheWall at;
    const wall::Project before = at.state.session.kept();
    const ImVec2 from = at.middle("wall/kelp");
    at.window.move_to(from);
    at.window.press();
    at.window.move_to({from.x + 80, from.y});
    CHECK(at.state.session.has_preview());
    at.window.key("Escape");
    CHECK_FALSE(at.state.session.has_preview());
    at.window.release();
    CHECK(at.state.session.kept() == before);
}

TEST_CASE("While the hand drags, only Escape means anything") {
    AtTheWall at;
    const ImVec2 from = at.middle("wall/kelp");
    at.window.move_to(from);
    at.window.press();
    at.window.move_to({from.x + 80, from.y});
    at.window.key("Ctrl+O");
    at.window.key("Right");
    CHECK(std::holds_alternative<std::monostate>(at.state.dialog));
    at.window.release();
    CHECK(at.state.session.history().undo_label() == "Move Kelp");
    at.window.key("Ctrl+Z");
    CHECK_FALSE(at.state.session.history().can_undo());
}

TEST_CASE("A gesture whose release was taken by something else is given up") {
    AtTheWall at;
    const ImVec2 from = at.middle("wall/kelp");
    at.window.move_to(from);
    at.window.press();
    at.window.move_to({from.x + 80, from.y});
    at.state.dialog = KeysDialog{};
    at.window.settle();
    at.window.release();
    at.window.key("Escape");
    at.window.settle();
    CHECK_FALSE(at.state.pointer.is_busy());
    CHECK_FALSE(at.state.session.has_preview());
}

TEST_CASE("Arrows are for the wall also after a button was pressed, and so is Tab") {
    AtTheWall at;
    at.window.click("wall/kelp");
    at.window.click("command/pin-or-unpin");
    at.window.click("command/pin-or-unpin");
    at.window.key("Right");
    at.window.key("Right");
    at.window.key("Space");
    CHECK(at.piece("kelp").at->x == Approx(1002));
    CHECK(at.piece("kelp").state == wall::PieceState::planned);
    at.window.key("Tab");
    CHECK(at.state.session.selection.one_piece() == wall::PieceId{"dune"});
}

TEST_CASE("Enter goes to the first field, and Ctrl with a letter takes in what is typed there") {
    AtTheWall at;
    at.window.click("wall/kelp");
    at.window.key("Enter");
    at.window.settle();
    CHECK(ImGui::GetIO().WantTextInput);
    at.window.key("Ctrl+A");
    at.window.type("Weed");
    at.window.key("Ctrl+S");
    do_what_waited(at.state);
    CHECK(at.piece("kelp").title == "Weed");
    CHECK(std::holds_alternative<FileDialog>(at.state.dialog));
}

TEST_CASE("The whole wall stays in sight however it changes, until the person zooms") {
    AtTheWall at;
    at.state.session.apply("Resize the wall",
                           edits::set_wall_size(at.state.session.kept(), {6000, 2400}));
    at.window.settle();
    const ItemBox canvas = at.window.item("canvas");
    CHECK(at.state.view.to_screen()(geometry::Point<geometry::Wall>{6000, 0}).x < canvas.max.x);
    at.window.move_to(at.middle("wall/kelp"));
    at.window.wheel(1);
    const double scale = at.state.view.scale();
    at.state.session.apply("Resize the wall",
                           edits::set_wall_size(at.state.session.kept(), {3600, 2400}));
    at.window.settle();
    CHECK(at.state.view.scale() == scale);
}

TEST_CASE("The wheel zooms about the pointer, and F shows the whole wall again") {
    AtTheWall at;
    const ImVec2 kelp = at.middle("wall/kelp");
    const double scale = at.state.view.scale();
    at.window.move_to(kelp);
    at.window.wheel(3);
    CHECK(at.state.view.scale() > 1.3 * scale);
    CHECK(at.middle("wall/kelp").x == Approx(kelp.x).margin(0.5));
    CHECK(at.middle("wall/kelp").y == Approx(kelp.y).margin(0.5));
    at.window.key("F");
    CHECK(at.state.view.scale() == Approx(scale));
}

TEST_CASE("Arrow keys move the selected piece by a millimetre, held down as one step") {
    AtTheWall at;
    at.window.click("wall/kelp");
    REQUIRE(at.state.session.selection.one_piece());
    for (int i = 0; i < 5; ++i)
        at.window.key("Right");
    at.window.key("Shift+Up");
    CHECK(at.piece("kelp").at->x == Approx(1005));
    CHECK(at.piece("kelp").at->y == Approx(1310));
    at.window.key("Ctrl+Z");
    CHECK(at.piece("kelp").at->x == Approx(1000));
}
