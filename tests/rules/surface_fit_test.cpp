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

TEST_CASE("Fresh paint with its day says from which day on strips hold, and is fine from then on") {
    wall::Project project = strips_on(wall::Surface::fresh_paint);
    project.room.painted_on = wall::date_named("2026-11-25");
    CHECK(only_finding("surface-fit", project).text ==
          "Strips pull fresh paint off the wall; it was painted on 25 November 2026 and dries 7 "
          "days, so hang Kelp and Dune from 2 December 2026 on.");
    project.hangs_on = wall::date_named("2026-12-01");
    CHECK(only_finding("surface-fit", project).text ==
          "Strips pull fresh paint off the wall; it was painted on 25 November 2026 and dries 7 "
          "days, so hang Kelp and Dune from 2 December 2026 on, not on 1 December 2026.");
    project.hangs_on = wall::date_named("2026-12-02");
    CHECK(findings_of("surface-fit", project).empty());
    project.style.dry_days = 10;
    CHECK(findings_of("surface-fit", project).size() == 1);
    project.room.painted_on = {};
    CHECK(only_finding("surface-fit", project).text.find("at least 10 days") != std::string::npos);
}

TEST_CASE(
    "Nails go neither into tiles nor into brick or concrete, unless the hook is made for it") {
    wall::Project project = strips_on(wall::Surface::concrete);
    hang_on_a_nail(project, "kelp");
    std::erase_if(project.pieces, [](const wall::Piece& piece) { return piece.id.text == "dune"; });
    const wall::Finding found = only_finding("surface-fit", project);
    CHECK(found.severity == Severity::mind);
    CHECK(found.text == "A picture hook's nail bends on concrete; hang Kelp by screws in plugs.");
    project.room.surface = wall::Surface::tile;
    CHECK(only_finding("surface-fit", project).text ==
          "A nail cracks a tile; hang Kelp by screws in plugs, drilled where tiles join.");
    project.room.surface = wall::Surface::wood;
    CHECK(findings_of("surface-fit", project).empty());
    project.room.surface = wall::Surface::brick;
    CHECK(findings_of("surface-fit", project).size() == 1);
    wall::FixingType hook = *find(small_catalogue(), wall::FixingTypeId{"hook_small"});
    hook.cores = {wall::Core::masonry};
    project.own.fixings = {hook};
    CHECK(findings_of("surface-fit", project).empty());
    project.room.surface = wall::Surface::painted;
    project.room.core = wall::Core::concrete;
    CHECK(findings_of("surface-fit", project).size() == 1);
}

TEST_CASE("A painted wall is fresh while the days of painting and hanging say so") {
    wall::Project project = strips_on(wall::Surface::painted);
    project.room.painted_on = wall::date_named("2026-11-25");
    CHECK(findings_of("surface-fit", project).empty());
    project.hangs_on = wall::date_named("2026-11-26");
    CHECK(only_finding("surface-fit", project).severity == Severity::stop);
    project.hangs_on = wall::date_named("2026-12-02");
    CHECK(findings_of("surface-fit", project).empty());
}

TEST_CASE("Where paint needs no days to dry nobody waits for it") {
    wall::Project project = strips_on(wall::Surface::fresh_paint);
    project.style.dry_days = 0;
    CHECK(findings_of("surface-fit", project).empty());
}
