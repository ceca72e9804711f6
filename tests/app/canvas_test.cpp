#include "app/actions.h"
#include "app/headless.h"
#include "app/panels/panels.h"
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
