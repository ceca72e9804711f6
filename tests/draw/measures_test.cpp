#include "draw/measures.h"

#include "draw/board_for_tests.h"
#include "draw/looking.h"
#include "support/gallery.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::draw;
using test::BoardFor;

namespace {

draw::WallDrawing measured(const wall::Project& project) {
    BoardFor scene(project);
    add_outer_measures(scene.board());
    return scene.drawing();
}

wall::Project two_pieces() {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_piece(project, "kelp", {700, 1100}, {400, 500});
    scenes::add_piece(project, "dune", {1160, 1200}, {300, 300});
    return project;
}

}  // namespace

TEST_CASE("The wall's width and height stand once each") {
    const auto drawing = measured(scenes::wall_of(3000, 2400));
    CHECK(test::count_text(drawing, "3000") == 1);
    CHECK(test::count_text(drawing, "2400") == 1);
    CHECK(test::texts_in(drawing).size() == 2);
}

TEST_CASE("A group is measured from the datum's corner and from the floor") {
    const auto drawing = measured(two_pieces());
    for (const char* figure : {"700", "760", "1100", "500"}) {
        CAPTURE(figure);
        CHECK(test::count_text(drawing, figure) == 1);
    }
}

TEST_CASE("From a datum on the right the distance to the right corner is shown") {
    wall::Project project = two_pieces();
    project.datum.side = wall::DatumSide::right;
    const auto drawing = measured(project);
    CHECK(test::count_text(drawing, "1540") == 1);
    CHECK(test::count_text(drawing, "700") == 0);
}

TEST_CASE("From the ceiling a group's top is measured down") {
    wall::Project project = two_pieces();
    project.datum.height = wall::DatumHeight::ceiling;
    CHECK(test::count_text(measured(project), "800") == 1);
}

TEST_CASE("A level line that crosses the group parts its height in two") {
    wall::Project project = two_pieces();
    project.datum = {wall::DatumHeight::level_line, wall::DatumSide::left, 1400};
    const auto drawing = measured(project);
    CHECK(test::count_text(drawing, "300") == 1);
    CHECK(test::count_text(drawing, "200") == 1);
}

TEST_CASE("Under a sloping ceiling both ends are measured and where the slope begins") {
    const auto drawing = measured(scenes::attic_gallery());
    for (const char* figure : {"2750", "950", "3700", "2400", "1500"}) {
        CAPTURE(figure);
        CHECK(test::count_text(drawing, figure) == 1);
    }
}

TEST_CASE("A gable that is higher than both its ends has its full height too") {
    wall::Project project = scenes::wall_of(4000, 2000);
    project.room.outline.corners = {{0, 0}, {4000, 0}, {4000, 2000}, {2000, 3300}, {0, 2000}};
    const auto drawing = measured(project);
    CHECK(test::count_text(drawing, "3300") == 1);
    CHECK(test::count_text(drawing, "2000") >= 1);
}

TEST_CASE("Two groups at the same height share one upright chain") {
    wall::Project project = scenes::wall_of(4000, 2400);
    scenes::add_piece(project, "kelp", {300, 1100}, {400, 500});
    scenes::add_piece(project, "dune", {1200, 1100}, {400, 500});
    CHECK(test::count_text(measured(project), "1100") == 1);
}

TEST_CASE("All measures are outside the wall") {
    const wall::Project project = scenes::attic_gallery();
    const auto wall = geometry::bounds(project.room.outline);
    for (const test::WallText& text : test::texts_in(measured(project)))
        CHECK_FALSE(wall.contains(text.at));
}
