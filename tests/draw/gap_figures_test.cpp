#include "draw/gap_figures.h"

#include "draw/board_for_tests.h"
#include "draw/looking.h"
#include "support/gallery.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::draw;
using test::BoardFor;

namespace {

/// Pieces of 400 by 500 in a row, with these gaps between them.
wall::Project row_of(const std::vector<double>& gaps) {
    wall::Project project = scenes::wall_of(6000, 2400);
    double x = 500;
    scenes::add_piece(project, "p0", {x, 1200}, {400, 500});
    for (std::size_t i = 0; i < gaps.size(); ++i) {
        x += 400 + gaps[i];
        scenes::add_piece(project, "p" + std::to_string(i + 1), {x, 1200}, {400, 500});
    }
    return project;
}

struct Gaps {
    std::string note;
    draw::WallDrawing drawing;
};

Gaps gaps_of(const wall::Project& project, double scale = 0.05) {
    BoardFor scene(project, scale);
    for (const wall::Placed& placed : wall::placed_pieces(project))
        scene.board().room.take(placed.place);
    const spacing::Group& group = scene.assessment().groups.front();
    add_gap_figures(scene.board(), group);
    return {gap_note(scene.board(), group), scene.drawing()};
}

}  // namespace

TEST_CASE("Gaps that read the same are noted as one number") {
    CHECK(gaps_of(row_of({60, 60.02})).note == "all gaps 60");
    CHECK(gaps_of(row_of({60})).note == "gap 60");
    CHECK(gaps_of(row_of({55, 72})).note == "gaps 55 to 72");
    CHECK(gaps_of(row_of({})).note.empty());
}

TEST_CASE("Each uneven gap has its figure") {
    const Gaps gaps = gaps_of(row_of({55, 72, 60}));
    CHECK(test::count_text(gaps.drawing, "55") == 1);
    CHECK(test::count_text(gaps.drawing, "72") == 1);
    CHECK(test::count_text(gaps.drawing, "60") == 1);
}

TEST_CASE("Of many equal gaps one across and one up are drawn") {
    CHECK(test::count_text(gaps_of(scenes::salon_of(24)).drawing, "60") == 2);
}

TEST_CASE("A gap between a piece and the one above it has an upright line") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_piece(project, "low", {500, 1000}, {400, 300});
    scenes::add_piece(project, "high", {500, 1370}, {400, 300});
    CHECK(test::count_text(gaps_of(project).drawing, "70") == 1);
}

TEST_CASE("A gap too narrow on paper is left to the note") {
    CHECK(test::count_text(gaps_of(row_of({60}), 0.02).drawing, "60") == 0);
}

TEST_CASE("Pieces that touch have no gap to draw") {
    CHECK(test::texts_in(gaps_of(row_of({0})).drawing).empty());
}
