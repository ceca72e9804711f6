#include "draw/fixing_lines.h"

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

wall::Project one_piece(wall::HangerType hanger) {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_piece(project, "kelp", {1000, 1000}, {400, 500}).hanger.type = hanger;
    return project;
}

std::vector<Path<Wall>> dashed(const draw::WallDrawing& drawing) {
    std::vector<Path<Wall>> found;
    for (const Path<Wall>& path : test::shapes_in<Path<Wall>>(drawing.shapes))
        if (path.stroke && path.stroke->type == LineType::dashed)
            found.push_back(path);
    return found;
}

}  // namespace

TEST_CASE("Strips show dashed where they are, inside the frame") {
    // ISO 128-2, line type 02.1: hidden edges are dashed.
    BoardFor scene(one_piece(wall::HangerType::strips));
    add_hidden_fixings(scene.board());
    const auto strips = dashed(scene.drawing());
    REQUIRE(strips.size() == scene.assessment().hangings.front().fixings.size());
    for (const Path<Wall>& strip : strips) {
        const Rect<Wall> place{{1000, 1000}, {1400, 1500}};
        CHECK(place.grown(1e-6).contains(test::bounds_of(strip).min));
        CHECK(place.grown(1e-6).contains(test::bounds_of(strip).max));
    }
}

TEST_CASE("A cord runs from ring to hook to ring") {
    BoardFor scene(one_piece(wall::HangerType::cord_one_hook));
    add_hidden_fixings(scene.board());
    const hanging::Hanging& hanging = scene.assessment().hangings.front();
    REQUIRE(hanging.cord);
    const auto lines = dashed(scene.drawing());
    const Path<Wall>& cord = lines.back();
    REQUIRE(cord.steps.size() == 2);
    CHECK(cord.steps[0].to == hanging.fixings.front().at);
    CHECK(cord.steps[0].to.y - cord.start.y == Approx(hanging.cord->drop));
    CHECK(cord.start.y == Approx(cord.steps[1].to.y));
}

TEST_CASE("Every mark is a cross at its place with its number") {
    BoardFor scene(scenes::attic_gallery());
    add_marks(scene.board());
    const auto& marks = scene.assessment().marks.marks;
    REQUIRE(marks.size() == 4);
    const draw::WallDrawing drawing = scene.drawing();
    for (const hanging::Mark& mark : marks)
        CHECK(test::count_text(drawing, std::to_string(mark.number)) == 1);
    int at_marks = 0;
    for (const Path<Wall>& path : test::shapes_in<Path<Wall>>(drawing.shapes))
        for (const hanging::Mark& mark : marks)
            if (distance(test::bounds_of(path).centre(), mark.at) < 1e-6 &&
                path.stroke->paint.ink == Ink::mark)
                ++at_marks;
    CHECK(at_marks == 8);
}

TEST_CASE("A mark's number lies on its own piece or clear of all") {
    const wall::Project project = scenes::salon_of(12);
    BoardFor scene(project);
    add_marks(scene.board());
    for (const test::WallText& text : test::texts_in(scene.drawing())) {
        const Rect<Wall> box = estimated_box(text, 0.05);
        int touched = 0;
        for (const wall::Placed& placed : wall::placed_pieces(project))
            touched += overlaps(box, placed.place) ? 1 : 0;
        CHECK(touched <= 1);
    }
}

TEST_CASE("On a drawing too small for numbers there are crosses only") {
    BoardFor scene(scenes::salon_of(12), 0.02);
    add_marks(scene.board());
    CHECK(test::texts_in(scene.drawing()).empty());
    CHECK_FALSE(scene.drawing().shapes.empty());
}

TEST_CASE("A planned piece's letter is filled, a hung one's open, a tiny one's bare") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_piece(project, "kelp", {200, 1000}, {400, 500});
    scenes::add_hung(project, "dune", {800, 1000}, {400, 500});
    scenes::add_piece(project, "wren", {1500, 1000}, {100, 100});
    BoardFor scene(project);
    add_letters(scene.board());
    const auto texts = test::texts_in(scene.drawing());
    REQUIRE(texts.size() == 3);
    CHECK(texts[0].paint.ink == Ink::paper);
    CHECK(texts[1].paint.ink == Ink::accent);
    CHECK(test::shapes_in<Path<Wall>>(scene.drawing().shapes).size() == 2);
    CHECK(texts[2].plate);
}
