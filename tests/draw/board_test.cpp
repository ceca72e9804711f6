#include "draw/board.h"

#include "draw/board_for_tests.h"
#include "draw/looking.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Rect;
using geometry::Wall;
using test::BoardFor;

TEST_CASE("A label goes to the first choice that is free and on the wall") {
    BoardFor scene(scenes::wall_of(3000, 2400));
    Board& board = scene.board();
    board.room.take({{400, 400}, {700, 700}});
    const Text<Wall> choices[] = {
        label_on(board, {500, 500}, "taken", Align::left),
        label_on(board, {2990, 500}, "over the edge", Align::left),
        label_on(board, {1000, 500}, "free", Align::left),
        label_on(board, {2000, 500}, "too late", Align::left),
    };
    CHECK(board.add_first_free(choices));
    const auto texts = test::texts_in(scene.drawing());
    REQUIRE(texts.size() == 1);
    CHECK(texts.front().text == "free");
    CHECK_FALSE(board.room.is_free(estimated_box(texts.front(), 0.05)));
}

TEST_CASE("A label that finds no room is not drawn") {
    BoardFor scene(scenes::wall_of(3000, 2400));
    scene.board().room.take({{0, 0}, {3000, 2400}});
    const Text<Wall> label = label_on(scene.board(), {500, 500}, "no", Align::left);
    CHECK_FALSE(scene.board().add_first_free({&label, 1}));
    CHECK(scene.board().shapes.empty());
}

TEST_CASE("The extent holds texts, shadows and pictures as well as lines") {
    Shapes shapes;
    Text<Wall> text{{1000, 0}, "wide words"};
    text.size = 2;
    shapes.emplace_back(text);
    shapes.emplace_back(Shadow<Wall>{{{0, 0}, {10, 10}}, 30});
    shapes.emplace_back(Image<Wall>{{{0, 0}, {10, 900}}, "", {}});
    const Rect<Wall> extent = extent_of(shapes, 0.05);
    CHECK(extent.min.x == Approx(-30));
    CHECK(extent.max.y == Approx(900));
    CHECK(extent.max.x == Approx(1000 + estimated_width("wide words", 2) / 0.05));
}
