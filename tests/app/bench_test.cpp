#include "app/actions.h"
#include "at_the_bench.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::app;

TEST_CASE("The bench lies where the wall is else, and the views are chosen in its row") {
    AtTheBench at;
    CHECK(at.window.has("bench/mount"));
    CHECK_FALSE(at.window.has("canvas"));
    at.window.click("bench/view-prints");
    CHECK(at.state.bench.view == desk::BenchView::prints);
    CHECK_FALSE(at.window.has("bench/mount"));
    at.window.click("bench/view-card");
    CHECK(at.state.bench.view == desk::BenchView::card);
    at.window.click("bench/view-mount");
    CHECK(at.window.has("bench/mount"));
    at.window.key("4");
    CHECK(at.window.has("canvas"));
    CHECK_FALSE(at.window.has("bench/mount"));
}

TEST_CASE("A window is dragged on the front, and a double click centres it again") {
    AtTheBench at;
    const ImVec2 from = at.middle("bench/window/1");
    at.window.drag(from, {from.x - 60, from.y - 30}, "Alt");
    REQUIRE(at.mount().by_hand);
    const double scale = at.state.bench.look().view.scale();
    CHECK(at.design().cut.left == Approx(85 - 60 / scale).margin(1.5 / scale));
    CHECK(at.last_step() == "Move the window of Kelp");
    at.window.key("Ctrl+Z");
    CHECK_FALSE(at.mount().by_hand);
    at.window.key("Ctrl+Shift+Z");
    at.window.double_click("bench/window/1");
    CHECK_FALSE(at.mount().by_hand);
    CHECK(at.last_step() == "Centre the window of Kelp");
}

TEST_CASE("An edge is dragged with its number in sight, and Escape gives it up") {
    AtTheBench at;
    const ItemBox box = at.window.item("bench/window/1");
    const ImVec2 edge{box.min.x, (box.min.y + box.max.y) / 2};
    at.window.move_to(edge);
    CHECK(at.window.has("status/words"));
    at.window.press();
    at.window.move_to({edge.x - 20, edge.y});
    CHECK(at.state.mount_tool.showing().words.starts_with("Overlap "));
    CHECK(at.mount().overlap < 5);
    at.window.key("Right");
    CHECK(at.state.mount_tool.is_busy());
    at.window.key("Escape");
    CHECK(at.mount().overlap == 5);
    at.window.release();
    CHECK_FALSE(at.state.session.history().can_undo());
}

TEST_CASE("A drag is given up when another window takes the keyboard or a dialog the release") {
    AtTheBench at;
    const ImVec2 from = at.middle("bench/window/1");
    at.window.move_to(from);
    at.window.press();
    at.window.move_to({from.x + 40, from.y});
    REQUIRE(at.state.session.has_preview());
    at.window.lose_focus();
    CHECK_FALSE(at.state.session.has_preview());
    at.window.release();
    at.window.move_to(from);
    at.window.press();
    at.window.move_to({from.x + 40, from.y});
    at.state.dialog = KeysDialog{};
    at.window.settle();
    at.window.release();
    at.window.key("Escape");
    at.window.settle();
    CHECK_FALSE(at.state.mount_tool.is_busy());
    CHECK_FALSE(at.state.session.has_preview());
}

TEST_CASE("B turns the mount over, and each of its boards is shown from behind") {
    AtTheBench at;
    CHECK_FALSE(at.window.has("bench/layer-2"));
    at.window.click("mount/add-layer");
    at.window.key("B");
    CHECK(at.state.mount_picture.side == desk::MountSide::back);
    CHECK_FALSE(at.window.has("bench/window/1"));
    const draw::WallDrawing top = at.state.mount_picture.drawing;
    at.window.click("bench/layer-2");
    CHECK(at.state.mount_picture.layer == 1);
    CHECK_FALSE(at.state.mount_picture.drawing == top);
    at.window.key("Up");
    at.window.settle();
    CHECK(at.state.mount_picture.layer == 0);
    at.window.key("Down");
    at.window.key("Down");
    at.window.settle();
    CHECK(at.state.mount_picture.layer == 1);
    at.window.click("bench/front");
    CHECK(at.state.mount_picture.side == desk::MountSide::front);
    at.window.click("bench/back");
    CHECK(at.state.mount_picture.side == desk::MountSide::back);
}

TEST_CASE(
    "With several pieces chosen, the mount of the first is turned over and its boards shown") {
    AtTheBench at;
    at.window.click("mount/add-layer");
    at.state.session.selection.toggle(wall::PieceId{"dune"});
    at.window.settle();
    REQUIRE(at.window.has("bench/window/1"));
    at.window.click("bench/back");
    CHECK(at.state.mount_picture.side == desk::MountSide::back);
    at.window.key("Down");
    at.window.settle();
    CHECK(at.state.mount_picture.layer == 1);
    CHECK(at.window.has("bench/layer-2"));
}

TEST_CASE("Arrows go from mount to mount and move nothing on the wall") {
    AtTheBench at;
    at.window.key("Right");
    CHECK(at.state.session.selection.one_piece() == wall::PieceId{"dune"});
    CHECK_FALSE(at.window.has("bench/window/1"));
    at.window.key("Right");
    CHECK(at.state.session.selection.one_piece() == wall::PieceId{"dune"});
    at.window.key("Left");
    at.window.key("Shift+Left");
    CHECK(at.state.session.selection.one_piece() == wall::PieceId{"kelp"});
    CHECK_FALSE(at.state.session.history().can_undo());
    at.window.click("bench/piece/B");
    CHECK(at.state.session.selection.one_piece() == wall::PieceId{"dune"});
    at.window.key("Escape");
    CHECK(at.state.session.selection.empty());
    CHECK_FALSE(at.window.has("bench/mount"));
    at.window.click("bench/piece/A");
    CHECK(at.state.session.selection.one_piece() == wall::PieceId{"kelp"});
}

TEST_CASE("Keys that change the wall say that they are for it, and undo and turning go on") {
    AtTheBench at;
    for (const char* key : {"G", "C", "P", "Ctrl+Left"}) {
        at.window.key(key);
        REQUIRE(at.state.session.notice);
        CHECK(at.state.session.notice->text.ends_with("is for the wall; go to Arrange first."));
        CHECK_FALSE(at.state.session.history().can_undo());
    }
    at.window.key("T");
    CHECK(at.design().blank.width == Approx(470));
    at.window.key("Ctrl+Z");
    CHECK(at.design().blank.width == Approx(370));
}

TEST_CASE("The wheel zooms the mount about the pointer, and F shows all of it again") {
    AtTheBench at;
    const double scale = at.state.bench.look().view.scale();
    const double wall_scale = at.state.view.scale();
    at.window.move_to(at.middle("bench/window/1"));
    at.window.wheel(3);
    CHECK(at.state.bench.look().view.scale() > 1.3 * scale);
    CHECK(at.state.view.scale() == wall_scale);
    at.window.key("F");
    at.window.settle();
    CHECK(at.state.bench.look().view.scale() == Approx(scale));
}

TEST_CASE("All of the mount is in sight, with its figures, at either size of the text") {
    const float scale = GENERATE(1.F, 2.F);
    AtTheBench at(wall_with_drawer(), {1280, 800}, scale);
    for (const desk::MountSide side : {desk::MountSide::front, desk::MountSide::back}) {
        at.state.bench.side = side;
        at.window.settle();
        const ItemBox area = at.window.item("bench/mount");
        const auto extent =
            at.state.bench.look().view.to_screen()(at.state.mount_picture.drawing.extent);
        CAPTURE(scale, static_cast<int>(side));
        CHECK(extent.min.x >= area.min.x);
        CHECK(extent.max.x <= area.max.x);
        CHECK(extent.min.y >= area.min.y);
        CHECK(extent.max.y <= area.max.y);
    }
}

TEST_CASE("Nothing on the bench or beside it overlaps or is cut off") {
    const auto [width, scale] =
        GENERATE(std::pair(1280.F, 1.F), std::pair(1920.F, 1.F), std::pair(1280.F, 2.F));
    wall::Project project = wall_with_drawer();
    project.mounts.front().under.resize(2);
    project.prints.front().pixels = wall::PixelSize{600, 850};
    AtTheBench at(project, {width, 800}, scale);
    at.open("mount/frame", "mount/outside");
    at.open("mount/windows", "mount/add-window");
    at.window.key("B");
    at.window.settle();
    CAPTURE(width, scale);
    CHECK(at.cut_off("bench/view") == std::vector<std::string>{});
    CHECK(at.cut_off("bench/layer") == std::vector<std::string>{});
    CHECK(at.overlaps("bench/") == std::vector<std::string>{});
    std::vector<std::string> beyond;
    for (const auto& [name, box] : at.window.ui.probe.items())
        if (name.starts_with("mount/") && (box.min.x < box.clip.x || box.max.x > box.clip.z))
            beyond.push_back(name);
    CHECK(beyond == std::vector<std::string>{});
}
