#include "draw/stage_shown.h"

#include "draw/looking.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Rect;
using geometry::Wall;

namespace {

/// Kelp hangs; Dune went up in stage 1, Tern goes up in stage 2 and is not bought yet.
wall::Project grown_wall() {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_hung(project, "kelp", {600, 1300}, {300, 400});
    scenes::add_piece(project, "dune", {960, 1300}, {300, 400}).stage = 1;
    wall::Piece& tern = scenes::add_piece(project, "tern", {1320, 1300}, {300, 400});
    tern.stage = 2;
    tern.wished = true;
    return project;
}

ElevationOptions stage(int number, double scale = 0.05) {
    ElevationOptions options;
    options.scale = scale;
    options.stage = StageShown{number, 2};
    return options;
}

/// Rounded boxes in the accent's ink: no other part of the drawing has corners like theirs.
std::vector<Rect<Wall>> outlines_in(const WallDrawing& drawing) {
    std::vector<Rect<Wall>> outlines;
    for (const Path<Wall>& path : test::shapes_in<Path<Wall>>(drawing.shapes))
        if (path.steps.size() == 8 && path.stroke && path.stroke->paint.ink == Ink::accent)
            outlines.push_back(test::bounds_of(path));
    return outlines;
}

/// How many have a light ground.
int grounds_in(const WallDrawing& drawing) {
    int count = 0;
    for (const Path<Wall>& path : test::shapes_in<Path<Wall>>(drawing.shapes))
        count += path.fill && path.fill->ink == Ink::accent && path.fill->alpha < 0.5 ? 1 : 0;
    return count;
}

}  // namespace

TEST_CASE("What the stage adds has an outline around it, and nothing else has") {
    const auto outlines = outlines_in(test::drawn(grown_wall(), stage(1)));
    REQUIRE(outlines.size() == 1);
    const Rect<Wall> dune = Rect<Wall>::at({960, 1300}, {300, 400});
    CHECK(outlines[0].left() < dune.left());
    CHECK(outlines[0].right() > dune.right());
    CHECK(outlines[0].top() > dune.top());
    CHECK(outlines[0].bottom() < dune.bottom());
    CHECK(outlines_in(test::drawn(grown_wall())).empty());
}

TEST_CASE("Outlines of neighbours stay apart, however small the drawing") {
    wall::Project project = grown_wall();
    project.pieces[1].stage = 2;
    for (const double scale : {0.1, 0.05, 0.01}) {
        const auto outlines = outlines_in(test::drawn(project, stage(2, scale)));
        REQUIRE(outlines.size() == 2);
        CHECK_FALSE(geometry::overlaps(outlines[0], outlines[1]));
    }
}

TEST_CASE("A new frame that is not bought yet is dashes on the wall's own colour as ever") {
    const WallDrawing shown = test::drawn(grown_wall(), stage(2));
    CHECK(outlines_in(shown).size() == 1);
    CHECK(grounds_in(shown) == 0);
    CHECK(grounds_in(test::drawn(grown_wall(), stage(1))) == 1);
    CHECK(test::count_lines(shown, LineType::dashed) ==
          test::count_lines(test::drawn(grown_wall()), LineType::dashed));
}

TEST_CASE("A label on the wall says which stage of how many it is") {
    const WallDrawing shown = test::drawn(grown_wall(), stage(2));
    CHECK(test::count_text(shown, "stage 2 of 2") == 1);
    for (const Text<Wall>& text : test::texts_in(shown)) {
        if (text.text != "stage 2 of 2")
            continue;
        const Rect<Wall> box = estimated_box(text, 0.05);
        CHECK(geometry::contains(grown_wall().room.outline, box));
        for (const Text<Wall>& other : test::texts_in(shown))
            if (other.text != text.text)
                CHECK_FALSE(geometry::overlaps(box, estimated_box(other, 0.05)));
    }
    CHECK(test::count_text(test::drawn(grown_wall()), "stage 2 of 2") == 0);
}

TEST_CASE("Under a slope the label goes where there is wall") {
    wall::Project project = scenes::attic_of(3000, 600, 2400);
    scenes::add_piece(project, "dune", {2000, 900}, {300, 400}).stage = 1;
    CHECK(test::count_text(test::drawn(project, stage(1)), "stage 1 of 2") == 1);
}
