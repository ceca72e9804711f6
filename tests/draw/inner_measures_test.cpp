#include "draw/inner_measures.h"

#include "draw/board_for_tests.h"
#include "draw/looking.h"
#include "support/gallery.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Rect;
using geometry::Wall;
using test::BoardFor;

namespace {

wall::Project over_sofa() {
    wall::Project project = scenes::wall_of(3600, 2400);
    scenes::add_furniture(project, wall::FurnitureType::sofa,
                          Rect<Wall>::at({600, 0}, {2000, 800}));
    scenes::add_piece(project, "kelp", {1000, 1050}, {500, 600});
    scenes::add_piece(project, "dune", {1560, 1100}, {440, 500});
    return project;
}

draw::WallDrawing measured(const wall::Project& project) {
    BoardFor scene(project);
    add_height_lines(scene.board());
    add_inner_measures(scene.board());
    return scene.drawing();
}

}  // namespace

TEST_CASE("The clearance above the sofa is that of the lowest piece over it") {
    CHECK(test::count_text(measured(over_sofa()), "250") == 1);
}

TEST_CASE("A group's note says its share of the furniture below and its gap") {
    CHECK(test::count_text(measured(over_sofa()), "group 1000 = 0.50 of the sofa, gap 60") == 1);
}

TEST_CASE("Without furniture the note speaks of gaps only") {
    wall::Project project = over_sofa();
    project.room.furniture.clear();
    const auto drawing = measured(project);
    CHECK(test::count_text(drawing, "gap 60") == 1);
    CHECK(test::count_text(drawing, "250") == 0);
}

TEST_CASE("The centre line is long-dash dotted and says its height") {
    // ISO 128-2, line type 04.1: centre lines.
    const auto drawing = measured(over_sofa());
    CHECK(test::count_lines(drawing, LineType::long_dash_dotted) == 1);
    CHECK(test::count_text(drawing, "centre line 1500") == 1);
}

TEST_CASE("A level line is drawn and named where marks are measured from it") {
    wall::Project project = over_sofa();
    CHECK(test::count_text(measured(project), "level line 1400") == 0);
    project.datum = {wall::DatumHeight::level_line, wall::DatumSide::left, 1400};
    CHECK(test::count_text(measured(project), "level line 1400") == 1);
}

TEST_CASE("A centre line above the wall is not drawn") {
    wall::Project project = scenes::wall_of(3000, 1200);
    const auto drawing = measured(project);
    CHECK(test::count_lines(drawing, LineType::long_dash_dotted) == 0);
    CHECK(test::texts_in(drawing).empty());
}

TEST_CASE("No label on the wall runs over a piece or another label") {
    const wall::Project project = scenes::attic_gallery();
    const auto texts = test::texts_in(measured(project));
    REQUIRE(texts.size() > 4);
    for (std::size_t i = 0; i < texts.size(); ++i) {
        const Rect<Wall> box = estimated_box(texts[i], 0.05);
        CAPTURE(texts[i].text);
        CHECK(geometry::contains(project.room.outline, box));
        for (const wall::Placed& placed : wall::placed_pieces(project))
            CHECK_FALSE(overlaps(box, placed.place));
        for (std::size_t j = 0; j < i; ++j)
            CHECK_FALSE(overlaps(box, estimated_box(texts[j], 0.05)));
    }
}
