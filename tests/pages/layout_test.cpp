// What must hold of all sheets of all walls: nothing cut off, nothing run together.
#include "pages/looking.h"
#include "pages/sheets.h"
#include "support/gallery.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::pages;

namespace {

struct Wall {
    const char* name;
    wall::Project project;
};

wall::Project long_titled(wall::Project project) {
    project.title =
        "A very long title: the attic room on the south side above the stairs, where the cat "
        "sleeps in winter and nobody else may sit, not even the person who pays the rent";
    for (wall::Piece& piece : project.pieces)
        piece.title += ", the second state of three, printed by hand on a paper made of rags";
    project.unit = units::LengthUnit::inch;
    return project;
}

wall::Project from_level_line(wall::Project project) {
    project.datum = {wall::DatumHeight::level_line, wall::DatumSide::right, 1400};
    project.unit = units::LengthUnit::cm;
    return project;
}

wall::Project crowded(wall::Project project) {
    for (int i = 0; i < 30; ++i)
        scenes::add_waiting(project, "w" + std::to_string(i), {250.0 + 20 * i, 500});
    return project;
}

/// A piece a stage, every other one still to buy.
wall::Project growing(wall::Project project) {
    for (std::size_t i = 0; i < project.pieces.size(); ++i)
        if (project.pieces[i].state == wall::PieceState::planned) {
            project.pieces[i].stage = static_cast<int>(i + 1);
            project.pieces[i].wished = i % 2 == 0;
        }
    return project;
}

std::vector<Wall> walls() {
    return {{"attic", scenes::attic_gallery()},
            {"attic, long titles, inches", long_titled(scenes::attic_gallery())},
            {"attic, level line", from_level_line(scenes::attic_gallery())},
            {"attic, crowded floor", crowded(scenes::attic_gallery())},
            {"attic, growing", growing(scenes::attic_gallery())},
            {"sixty, growing, long titles, inches", growing(long_titled(scenes::salon_of(60)))},
            {"five", scenes::salon_of(5)},
            {"sixty", scenes::salon_of(60)},
            {"sixty, long titles, inches", long_titled(scenes::salon_of(60))},
            {"stair", scenes::stair_gallery()},
            {"bare", scenes::wall_of(3000, 2400)},
            {"tiny", scenes::wall_of(300, 200)},
            {"hall", scenes::wall_of(60000, 4000)}};
}

}  // namespace

TEST_CASE("On no sheet does anything reach into the margin or run over other words") {
    for (const Paper paper : {Paper::a4, Paper::letter, Paper::a3})
        for (const Wall& one : walls()) {
            const auto made = sheets(
                one.project, rules::assess(one.project, scenes::small_catalogue()), {paper, ""});
            for (std::size_t i = 0; i < made.size(); ++i) {
                CAPTURE(one.name, size_of(paper).width, i + 1);
                const Area inside = made[i].extent.grown(-kMargin);
                CHECK(test::outside(made[i].shapes, inside) == std::vector<std::string>{});
                CHECK(test::collisions(made[i].shapes) == std::vector<std::string>{});
            }
        }
}

TEST_CASE("The elevation alone has nothing outside its page and no words run together") {
    for (const Wall& one : walls()) {
        CAPTURE(one.name);
        const draw::PageDrawing page =
            elevation_page(one.project, rules::assess(one.project, scenes::small_catalogue()), "");
        CHECK(test::outside(page.shapes, page.extent) == std::vector<std::string>{});
        CHECK(test::collisions(page.shapes) == std::vector<std::string>{});
        CHECK(page.extent.width() < 500);
    }
}
