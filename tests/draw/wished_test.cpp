#include "draw/wished.h"

#include "draw/framed.h"
#include "draw/looking.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Rect;
using geometry::Wall;

namespace {

/// Kelp hangs, Dune is planned and not bought yet, Tern waits and is not bought yet either.
wall::Project small_wall() {
    wall::Project project = scenes::wall_of(2000, 2200);
    scenes::add_hung(project, "kelp", {600, 1300}, {300, 400});
    scenes::add_piece(project, "dune", {960, 1300}, {310, 410}).wished = true;
    scenes::add_waiting(project, "tern", {320, 420}).wished = true;
    return project;
}

/// As the canvas shows it where layouts are chosen: no letters, no marks.
ElevationOptions plain() {
    ElevationOptions options;
    options.fixings = options.letters = false;
    return options;
}

/// The outlines in dashes of the width that is for frames not bought yet.
std::vector<Rect<Wall>> outlines_in(const WallDrawing& drawing) {
    std::vector<Rect<Wall>> outlines;
    for (const Path<Wall>& path : test::shapes_in<Path<Wall>>(drawing.shapes))
        if (path.stroke && path.stroke->type == LineType::dashed &&
            path.stroke->paint.ink == Ink::accent)
            outlines.push_back(test::bounds_of(path));
    return outlines;
}

/// Of the texts that read so.
std::vector<Rect<Wall>> boxes_of(const WallDrawing& drawing, const std::string& words) {
    std::vector<Rect<Wall>> boxes;
    for (const Text<Wall>& text : test::texts_in(drawing))
        if (text.text == words)
            boxes.push_back(estimated_box(text, ElevationOptions{}.scale));
    return boxes;
}

bool contains(const Rect<Wall>& whole, const Rect<Wall>& part) {
    return whole.contains(part.min) && whole.contains(part.max);
}

}  // namespace

TEST_CASE("A frame that is not bought yet is an outline in dashes, on the wall and on the floor") {
    const wall::Project project = small_wall();
    const WallDrawing drawing = test::drawn(project, plain());
    const auto outlines = outlines_in(drawing);
    REQUIRE(outlines.size() == 2);
    CHECK(outlines[0] == Rect<Wall>::at({960, 1300}, {310, 410}));
    CHECK(outlines[1].size() == geometry::Size{320, 420});
    CHECK(outlines[1].top() < 0);
    const auto shadows = test::shapes_in<Shadow<Wall>>(drawing.shapes);
    REQUIRE(shadows.size() == 1);
    CHECK(shadows[0].of == *wall::place_of(project, project.pieces[0]));
}

TEST_CASE("It shows neither picture nor mount, for there is no frame to hold them") {
    wall::Project project = small_wall();
    wall::Print& print = project.prints.emplace_back();
    print.id = {"ebb"};
    print.size = {200, 300};
    print.picture = "ebb.png";
    project.pieces[1].print = print.id;
    Shapes shapes;
    add_framed(shapes, project, project.pieces[1], {{0, 0}, {310, 410}}, {});
    CHECK(shapes.size() == 1);
    project.pieces[1].wished = false;
    add_framed(shapes, project, project.pieces[1], {{0, 0}, {310, 410}}, {});
    CHECK(test::shapes_in<Image<Wall>>(shapes).size() == 1);
}

TEST_CASE("Its title and the size to buy are written in its middle") {
    const wall::Project project = small_wall();
    const WallDrawing drawing = test::drawn(project, plain());
    const Rect<Wall> place = *wall::place_of(project, project.pieces[1]);
    for (const char* words : {"Dune", "310 × 410"}) {
        const auto boxes = boxes_of(drawing, words);
        CAPTURE(words);
        REQUIRE(boxes.size() == 1);
        CHECK(contains(place, boxes[0]));
        CHECK(boxes[0].centre().x == Approx(place.centre().x));
    }
    CHECK(test::count_text(drawing, "320 × 420") == 1);
    CHECK(test::count_text(drawing, "Tern") == 1);
    CHECK(test::count_text(drawing, "Kelp") == 0);
}

TEST_CASE("The size is in the unit that the person reads") {
    wall::Project project = small_wall();
    project.unit = units::LengthUnit::cm;
    CHECK(test::count_text(test::drawn(project, plain()), "31 × 41") == 1);
}

TEST_CASE(
    "Where pieces have letters, the size stands beside the letter and the title is left out") {
    const wall::Project project = small_wall();
    const WallDrawing drawing = test::drawn(project);
    const Rect<Wall> place = *wall::place_of(project, project.pieces[1]);
    CHECK(test::count_text(drawing, "Dune") == 0);
    const auto size = boxes_of(drawing, "310 × 410");
    REQUIRE(size.size() == 1);
    CHECK(contains(place, size[0]));
    for (const Rect<Wall>& letter : boxes_of(drawing, "B"))
        CHECK_FALSE(overlaps(letter, size[0]));
}

TEST_CASE("A detail of a group shows its frames that are not bought yet in the same way") {
    const wall::Project project = small_wall();
    const rules::Assessment assessment = rules::assess(project, scenes::small_catalogue());
    REQUIRE(assessment.groups.size() == 1);
    const WallDrawing detail = group_detail(project, assessment, {}, assessment.groups.front());
    CHECK(outlines_in(detail).size() == 1);
    CHECK(test::count_text(detail, "310 × 410") == 1);
}

TEST_CASE("Marks and fixings are drawn for a frame that is not bought yet as for any planned one") {
    wall::Project project = small_wall();
    const auto marks = [](const wall::Project& one) {
        return rules::assess(one, scenes::small_catalogue()).marks.marks.size();
    };
    const std::size_t wished = marks(project);
    project.pieces[1].wished = false;
    CHECK(wished == marks(project));
    CHECK(wished > 0);
}

TEST_CASE("Whatever the size and the scale, what is written stays inside its outline, uncut") {
    rc::prop("or is left out", []() {
        wall::Project project = scenes::wall_of(4000, 4000);
        const auto side = [] { return static_cast<double>(*rc::gen::inRange(45, 1500)); };
        scenes::add_piece(project, "dune", {1000, 1000}, {side(), side()}).wished = true;
        ElevationOptions options = plain();
        options.dimensions = false;
        options.scale = *rc::gen::element(0.1, 0.05, 0.02);
        const Rect<Wall> place = *wall::place_of(project, project.pieces[0]);
        for (const Text<Wall>& text : test::texts_in(test::drawn(project, options))) {
            RC_ASSERT(contains(place, estimated_box(text, options.scale)));
            if (text.text.find("×") != std::string::npos)
                RC_ASSERT(text.text.find("...") == std::string::npos);
        }
    });
}
