#include "draw/waiting.h"

#include "draw/board_for_tests.h"
#include "draw/looking.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Rect;
using geometry::Wall;
using test::BoardFor;

namespace {

wall::Project waiting_of(int count, double width, double height) {
    wall::Project project = scenes::wall_of(3000, 2400);
    for (int i = 0; i < count; ++i)
        scenes::add_waiting(project, "w" + std::to_string(i), {width + 10 * i, height});
    return project;
}

}  // namespace

TEST_CASE("Waiting pieces stand below the wall on one line until it is full") {
    BoardFor scene(waiting_of(3, 300, 400));
    const auto standing = lay_out_waiting(scene.board());
    REQUIRE(standing.size() == 3);
    for (const Standing& one : standing) {
        CHECK(one.place.max.y < 0);
        CHECK(one.place.min.y == Approx(standing.front().place.min.y));
    }
}

TEST_CASE("However many wait, none runs into another or past the wall's end") {
    rc::prop("in rows", []() {
        const int count = *rc::gen::inRange(1, 40);
        const double width = *rc::gen::inRange(50, 900);
        BoardFor scene(waiting_of(count, width, 300));
        const auto standing = lay_out_waiting(scene.board());
        RC_ASSERT(standing.size() == static_cast<std::size_t>(count));
        for (std::size_t i = 0; i < standing.size(); ++i) {
            RC_ASSERT(standing[i].place.max.x <= 3000.0);
            for (std::size_t j = 0; j < i; ++j)
                RC_ASSERT(!overlaps(standing[i].place, standing[j].place));
        }
    });
}

TEST_CASE("The floor reaches under everything that waits") {
    BoardFor scene(waiting_of(12, 500, 600));
    const auto standing = lay_out_waiting(scene.board());
    const FloorReach reach = floor_under(scene.board(), standing);
    for (const Standing& one : standing) {
        CHECK(reach.bottom < one.place.min.y);
        CHECK(reach.right > one.place.max.x);
    }
}

TEST_CASE("Each waiting piece has its name below it") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_waiting(project, "buoy", {300, 400}).title = "Buoy";
    scenes::add_waiting(project, "untitled", {300, 400}).title.clear();
    const auto drawing = test::drawn(project);
    CHECK(test::count_text(drawing, "Buoy") == 1);
    CHECK(test::count_text(drawing, "untitled") == 1);
}

TEST_CASE("Alone, waiting pieces stand on lines of their own, the last at 0") {
    const wall::Project project = waiting_of(9, 400, 500);
    const draw::WallDrawing drawing = waiting_pieces(project, {}, 1500);
    const auto shadows = test::shapes_in<Shadow<Wall>>(drawing.shapes);
    REQUIRE(shadows.size() == 9);
    CHECK(shadows.back().of.min.y == Approx(0).margin(1e-9));
    CHECK(shadows.front().of.min.y > 500);
    CHECK(drawing.extent.width() <= 1500 + 1e-6);
}

TEST_CASE("Where nothing waits, there is nothing to draw") {
    CHECK(waiting_pieces(scenes::wall_of(3000, 2400), {}, 1500).shapes.empty());
}
