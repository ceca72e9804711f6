#include "draw/elevation.h"

#include "draw/labels.h"
#include "draw/looking.h"
#include "rules/assess.h"
#include "support/gallery.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Rect;
using geometry::Wall;

namespace {

/// Small enough for its golden to be read: one hung piece, one planned over a table, a socket.
wall::Project small_wall() {
    wall::Project project = scenes::wall_of(2000, 2200);
    project.title = "Small wall";
    project.room.skirting_height = 80;
    scenes::add_furniture(project, wall::FurnitureType::table,
                          Rect<Wall>::at({500, 0}, {1000, 740}));
    scenes::add_fixture(project, wall::FixtureType::socket, Rect<Wall>::at({1700, 260}, {80, 80}));
    scenes::add_hung(project, "kelp", {600, 940}, {300, 400});
    scenes::add_piece(project, "dune", {960, 940}, {300, 400});
    scenes::add_waiting(project, "tern", {210, 297});
    return project;
}

double mirrored(double x, double width) {
    return width - x;
}

/// The same wall seen in a mirror.
wall::Project mirror(wall::Project project, double width) {
    for (wall::Piece& piece : project.pieces)
        if (piece.at)
            piece.at->x = mirrored(piece.at->x + wall::outside_size(project, piece).width, width);
    return project;
}

std::vector<Rect<Wall>> frames_in(const draw::WallDrawing& drawing) {
    std::vector<Rect<Wall>> frames;
    for (const Shadow<Wall>& shadow : test::shapes_in<Shadow<Wall>>(drawing.shapes))
        frames.push_back(shadow.of);
    return frames;
}

void check_labels_apart(const draw::WallDrawing& drawing, double scale) {
    const auto texts = test::texts_in(drawing);
    for (std::size_t i = 0; i < texts.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            CAPTURE(texts[i].text, texts[j].text);
            CHECK_FALSE(overlaps(estimated_box(texts[i], scale), estimated_box(texts[j], scale)));
        }
}

}  // namespace

TEST_CASE("A small wall is drawn as its golden says") {
    test::check_golden("small_wall.txt", to_text(test::drawn(small_wall())));
}

TEST_CASE("The same wall gives the same drawing") {
    CHECK(test::drawn(scenes::attic_gallery()) == test::drawn(scenes::attic_gallery()));
}

TEST_CASE("Every shape is inside the drawing's extent") {
    for (const wall::Project& project :
         {small_wall(), scenes::attic_gallery(), scenes::salon_of(60), scenes::stair_gallery()}) {
        const draw::WallDrawing drawing = test::drawn(project);
        for (const Shape<Wall>& shape : drawing.shapes)
            for (const Point<Wall> point : test::points_of(shape))
                CHECK(drawing.extent.contains(point));
    }
}

TEST_CASE("No label runs into another, at any scale") {
    for (const double scale : {0.1, 0.05, 0.02, 0.01}) {
        ElevationOptions options;
        options.scale = scale;
        CAPTURE(scale);
        for (const wall::Project& project :
             {small_wall(), scenes::attic_gallery(), scenes::salon_of(24), scenes::stair_gallery()})
            check_labels_apart(test::drawn(project, options), scale);
    }
}

TEST_CASE("No label runs into another on walls hung at random") {
    rc::prop("up to twelve pieces", []() {
        wall::Project project = scenes::wall_of(4000, 2600);
        const int count = *rc::gen::inRange(1, 12);
        for (int i = 0; i < count; ++i)
            scenes::add_piece(project, "p" + std::to_string(i),
                              {100.0 + 320 * i, static_cast<double>(*rc::gen::inRange(600, 1700))},
                              {300, static_cast<double>(*rc::gen::inRange(150, 600))})
                .wished = *rc::gen::arbitrary<bool>();
        const auto texts = test::texts_in(test::drawn(project));
        for (std::size_t i = 0; i < texts.size(); ++i)
            for (std::size_t j = 0; j < i; ++j)
                RC_ASSERT(!overlaps(estimated_box(texts[i], 0.05), estimated_box(texts[j], 0.05)));
    });
}

TEST_CASE("A mirrored wall has its frames mirrored") {
    const wall::Project project = small_wall();
    const auto frames = frames_in(test::drawn(project));
    const auto other = frames_in(test::drawn(mirror(project, 2000)));
    REQUIRE(frames.size() == other.size());
    for (std::size_t i = 0; i < 2; ++i) {
        CHECK(other[i].min.x == Approx(mirrored(frames[i].max.x, 2000)));
        CHECK(other[i].min.y == Approx(frames[i].min.y));
    }
}

TEST_CASE("Each frame is drawn where its piece hangs") {
    const wall::Project project = scenes::attic_gallery();
    const auto frames = frames_in(test::drawn(project));
    const auto placed = wall::placed_pieces(project);
    REQUIRE(frames.size() == project.pieces.size());
    for (std::size_t i = 0; i < placed.size(); ++i)
        CHECK(frames[i] == placed[i].place);
}

TEST_CASE("What is not asked for is not drawn") {
    const wall::Project project = scenes::attic_gallery();
    ElevationOptions bare;
    bare.dimensions = bare.fixings = bare.marks = bare.zones = false;
    bare.waiting = bare.letters = false;
    const draw::WallDrawing drawing = test::drawn(project, bare);
    CHECK(test::texts_in(drawing).empty());
    CHECK(test::count_lines(drawing, LineType::dashed) == 0);
    CHECK(test::count_lines(drawing, LineType::long_dash_dotted) == 0);
    CHECK(frames_in(drawing).size() == 7);
}

TEST_CASE("Every mark of the table is numbered on the elevation") {
    const wall::Project project = scenes::attic_gallery();
    const auto assessment = rules::assess(project, scenes::small_catalogue());
    const draw::WallDrawing drawing = draw::elevation(project, assessment, {});
    for (const hanging::Mark& mark : assessment.marks.marks)
        CHECK(test::count_text(drawing, std::to_string(mark.number)) == 1);
}

TEST_CASE("A detail shows its own group only, with all its marks") {
    wall::Project project = scenes::wall_of(5000, 2400);
    scenes::add_piece(project, "kelp", {300, 1100}, {200, 300});
    scenes::add_piece(project, "dune", {560, 1100}, {200, 300});
    scenes::add_piece(project, "far", {3000, 1100}, {200, 300});
    const auto assessment = rules::assess(project, scenes::small_catalogue());
    REQUIRE(assessment.groups.size() == 2);
    ElevationOptions options;
    options.scale = 0.2;
    const draw::WallDrawing detail =
        group_detail(project, assessment, options, assessment.groups.front());
    CHECK(frames_in(detail).size() == 2);
    CHECK(test::count_text(detail, "460") == 1);
    CHECK(test::count_text(detail, "A") == 1);
    CHECK(test::count_text(detail, "C") == 0);
    for (const hanging::Mark& mark : assessment.marks.marks)
        CHECK(test::count_text(detail, std::to_string(mark.number)) ==
              (mark.piece.text == "far" ? 0 : 1));
}

TEST_CASE("An empty wall can be drawn") {
    const draw::WallDrawing drawing = test::drawn(scenes::wall_of(3000, 2400));
    CHECK(frames_in(drawing).empty());
    CHECK(drawing.extent.width() > 3000);
}
