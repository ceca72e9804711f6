#include "desk/bench/mount_picture.h"

#include "desk/bench/bench_pieces.h"
#include "mounted.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;

namespace {

constexpr double kScale = 0.4;

std::size_t texts_in(const MountPicture& picture) {
    std::size_t count = 0;
    for (const auto& shape : picture.drawing.shapes)
        count += std::holds_alternative<draw::Text<geometry::Wall>>(shape) ? 1 : 0;
    return count;
}

wall::Project wall_with_layers() {
    wall::Project project = wall_with_mount();
    project.mounts.front().under.resize(2);
    return project;
}

}  // namespace

TEST_CASE("A mount is drawn once, and anew when it, its side, its layer or the scale changes") {
    Session session(wall_with_layers());
    Bench bench;
    MountPicture picture;
    CHECK(refresh(picture, session, kOnBench, bench, kScale));
    CHECK_FALSE(refresh(picture, session, kOnBench, bench, kScale));
    CHECK(refresh(picture, session, kOnBench, bench, 2 * kScale));
    bench.side = MountSide::back;
    CHECK(refresh(picture, session, kOnBench, bench, 2 * kScale));
    CHECK_FALSE(refresh(picture, session, kOnBench, bench, 2 * kScale));
    bench.layer = 2;
    CHECK(refresh(picture, session, kOnBench, bench, 2 * kScale));
    CHECK(picture.layer == 2);
    bench.layer = 9;
    CHECK_FALSE(refresh(picture, session, kOnBench, bench, 2 * kScale));
    MountHand hand{session};
    hand.drag({185, 235}, {150, 200});
    CHECK(refresh(picture, hand.session, kOnBench, bench, 2 * kScale));
}

TEST_CASE(
    "The blank lies in the drawing where its frame's rebate is, and points go there and back") {
    const Session session(wall_with_mount());
    MountPicture picture;
    refresh(picture, session, kOnBench, {}, kScale);
    CHECK(picture.blank.width() == Approx(370));
    CHECK(picture.blank.centre().x == Approx(200));
    CHECK(picture.blank.centre().y == Approx(250));
    const auto window = on_drawing(picture, window_at(*picture.design, 0));
    CHECK(window.size().width == Approx(200));
    const auto corner = on_blank(picture, {window.min.x, window.max.y});
    CHECK(corner.x == Approx(85));
    CHECK(corner.y == Approx(91.5));
}

TEST_CASE("A piece without a mount shows its frame from the front, whatever side is asked for") {
    wall::Project project = wall_with_mount();
    project.pieces.front().mount.reset();
    const Session session(project);
    Bench bench;
    bench.side = MountSide::back;
    MountPicture picture;
    CHECK(refresh(picture, session, kOnBench, bench, kScale));
    CHECK_FALSE(picture.design);
    CHECK(picture.side == MountSide::front);
    CHECK_FALSE(picture.drawing.shapes.empty());
    CHECK(texts_in(picture) == 0);
    CHECK_FALSE(refresh(picture, session, kOnBench, bench, kScale));
    CHECK(overlay(picture, {}).empty());
}

TEST_CASE(
    "What the hand holds is marked on the front, with the number of an edge, and not behind") {
    MountHand hand{Session(wall_with_two_windows())};
    MountPicture picture;
    refresh(picture, hand.session, kOnBench, {}, kScale);
    CHECK(overlay(picture, hand.tool.showing()).empty());
    hand.tool.move(hand.session, kOnBench, hand.at({115, 235}));
    CHECK(overlay(picture, hand.tool.showing()).size() == 1);
    const double left = window_at(hand.design(), 0).min.x;
    hand.tool.press(hand.session, kOnBench, hand.at({left, 235}));
    hand.tool.move(hand.session, kOnBench, hand.at({left - 4, 235}));
    refresh(picture, hand.session, kOnBench, {}, kScale);
    std::string words;
    for (const auto& shape : overlay(picture, hand.tool.showing()))
        if (const auto* text = std::get_if<draw::Text<geometry::Wall>>(&shape))
            words += text->text;
    CHECK(words == "Overlap 3 mm");
    Bench bench;
    bench.side = MountSide::back;
    refresh(picture, hand.session, kOnBench, bench, kScale);
    CHECK(overlay(picture, hand.tool.showing()).empty());
}

TEST_CASE("Pieces lie by the bench from left to right, and then those that wait") {
    wall::Project project = wall_with_mount();
    scenes::add_waiting(project, "dune", {300, 400});
    scenes::add_piece(project, "tide", {200, 1300}, {300, 400});
    const std::vector<wall::PieceId> order{{"tide"}, kOnBench, {"dune"}};
    CHECK(bench_order(project) == order);
    Session session(project);
    select_mount(session, -1);
    CHECK(session.selection.one_piece() == wall::PieceId{"dune"});
    session.selection.clear();
    select_mount(session, 1);
    CHECK(session.selection.one_piece() == wall::PieceId{"tide"});
    CHECK(layer_count(session) == 0);
    select_mount(session, 1);
    CHECK(session.selection.one_piece() == kOnBench);
    CHECK(layer_count(session) == 1);
    session.selection.toggle(wall::PieceId{"tide"});
    CHECK(piece_on_bench(session) == kOnBench);
    CHECK(layer_count(session) == 1);
    session.selection.toggle(wall::PieceId{"tide"});
    select_mount(session, 5);
    CHECK(session.selection.one_piece() == wall::PieceId{"dune"});
    Session bare(scenes::wall_of(3000, 2400));
    select_mount(bare, 1);
    CHECK(bare.selection.empty());
}
