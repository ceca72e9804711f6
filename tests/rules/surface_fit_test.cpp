#include "rules/asked.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;
using wall::Severity;

namespace {

wall::Project strips_on(wall::Surface surface) {
    wall::Project project = wall_of(3600, 2400);
    project.room.surface = surface;
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_piece(project, "dune", {1360, 1300}, {300, 400});
    return project;
}

}  // namespace

TEST_CASE("Strips on wallpaper are a stop that names all their pieces once") {
    const wall::Finding finding = only_finding("surface-fit", strips_on(wall::Surface::wallpaper));
    CHECK(finding.severity == Severity::stop);
    CHECK(finding.pieces == std::vector<wall::PieceId>{{"kelp"}, {"dune"}});
    CHECK(finding.place == geometry::Rect<geometry::Wall>{{1000, 1300}, {1660, 1700}});
    CHECK(finding.text ==
          "Strips tear wallpaper off the wall; hang Kelp and Dune by hooks or screws.");
}

TEST_CASE("On fresh paint strips wait for a week") {
    CHECK(only_finding("surface-fit", strips_on(wall::Surface::fresh_paint)).text ==
          "Strips pull fresh paint off the wall; wait at least 7 days from painting before hanging "
          "Kelp and Dune.");
}

TEST_CASE("Rough walls hold no strips and smooth ones do") {
    // Packets of strips name these surfaces; common practice, no source.
    for (const wall::Surface rough :
         {wall::Surface::textured, wall::Surface::brick, wall::Surface::concrete})
        CHECK(only_finding("surface-fit", strips_on(rough)).severity == Severity::stop);
    for (const wall::Surface smooth :
         {wall::Surface::painted, wall::Surface::tile, wall::Surface::wood})
        CHECK(findings_of("surface-fit", strips_on(smooth)).empty());
}

TEST_CASE("Hooks may go through wallpaper") {
    wall::Project project = strips_on(wall::Surface::wallpaper);
    hang_on_a_nail(project, "kelp");
    hang_on_a_nail(project, "dune");
    CHECK(findings_of("surface-fit", project).empty());
}
