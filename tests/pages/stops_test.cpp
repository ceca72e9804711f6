// No paper hands out marks of a piece that has a stop without saying so.

#include "pages/looking.h"
#include "pages/sheet_elevation.h"
#include "pages/sheet_hanging_templates.h"
#include "pages/sheet_marks.h"
#include "pages/template_reading.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace wallwright;
using namespace wallwright::pages;
using namespace wallwright::test;

namespace {

/// Kelp is well, Gull is too heavy for what it was said to hang on, and on Fog the rings are wider
/// apart than the frame.
wall::Project wall_with_stops() {
    wall::Project project = scenes::wall_of(4000, 2600);
    const auto add = [&project](const char* id, const char* title, double left) {
        wall::Piece& piece = scenes::add_piece(project, id, {left, 1300}, {300, 400});
        piece.title = title;
        piece.hanger.type = wall::HangerType::two_rings;
        piece.weighed = units::Kilograms{1};
    };
    add("kelp", "Kelp", 500);
    add("gull", "Gull", 860);
    add("fog", "Fog", 1220);
    project.pieces[1].weighed = units::Kilograms{80};
    project.pieces[2].hanger.drop = 60;
    project.pieces[2].hanger.ring_spacing = 500;
    return project;
}

/// Octagons in the ink of stops.
std::size_t signs_in(const Shapes& shapes) {
    const auto paths = shapes_in<PagePath>(shapes);
    return static_cast<std::size_t>(std::ranges::count_if(paths, [](const PagePath& path) {
        return path.fill && path.fill->ink == draw::Ink::stop && bounds_of(path).width() > 2 &&
               std::abs(bounds_of(path).width() - bounds_of(path).height()) < 0.01;
    }));
}

constexpr const char* kBoth = "1 piece has a stop: B. C has no mark. See the findings.";

}  // namespace

TEST_CASE("The page of marks names pieces with a stop at its top and at their rows") {
    const wall::Project project = wall_with_stops();
    const auto sheets = mark_sheets(project, assessed(project), {});
    const std::string words = running_text(sheets);
    CHECK(words.find("1 piece has a stop: B Gull. See the findings.") != std::string::npos);
    CHECK(words.find("C Fog has no mark: rings 500 mm apart do not fit") != std::string::npos);
    CHECK(words.find("Stop: too heavy for its fixing") != std::string::npos);
    CHECK(signs_in(sheets.front().shapes) == 3);
    CHECK(words.find("the ring or the cord") != std::string::npos);
}

TEST_CASE("A page of marks without a stop has no sign of one, and without a mark says why") {
    wall::Project project = wall_with_stops();
    project.pieces.resize(1);
    CHECK(signs_in(mark_sheets(project, assessed(project), {}).front().shapes) == 0);
    project = wall_with_stops();
    project.pieces.erase(project.pieces.begin(), project.pieces.begin() + 2);
    CHECK(running_text(mark_sheets(project, assessed(project), {})).find("A Fog has no mark") !=
          std::string::npos);
}

TEST_CASE("Every kind of template and the elevation name pieces with a stop and without a mark") {
    const wall::Project project = wall_with_stops();
    for (const TemplateKind kind :
         {TemplateKind::points, TemplateKind::strips, TemplateKind::group}) {
        const auto sheets = templates(project, kind, Paper::a4);
        REQUIRE_FALSE(sheets.empty());
        for (const draw::PageDrawing& sheet : sheets) {
            INFO(wall::name_of(kind));
            CHECK(has_text(sheet.shapes, kBoth));
            CHECK(signs_in(sheet.shapes) >= 1);
        }
    }
    const auto pages = templates(project, TemplateKind::pieces, Paper::a4);
    CHECK(has_text(pages.front().shapes, "C Fog has no mark: its hanger does not fit."));
    for (const draw::PageDrawing& sheet : pages)
        if (has_text(sheet.shapes, "B Gull"))
            CHECK(has_text(sheet.shapes, "Stop: too heavy for its fixing"));
    const auto elevation = elevation_sheets(project, assessed(project), {});
    CHECK(has_text(elevation.front().shapes, kBoth));
    CHECK(signs_in(elevation.front().shapes) == 1);
}

TEST_CASE("Words about stops run into nothing else on templates, and keep to the page") {
    for (const Paper paper : kPapers)
        for (const TemplateKind kind : {TemplateKind::pieces, TemplateKind::points,
                                        TemplateKind::strips, TemplateKind::group})
            for (const draw::PageDrawing& sheet : templates(wall_with_stops(), kind, paper)) {
                INFO(wall::name_of(kind));
                CHECK(collisions(sheet.shapes) == std::vector<std::string>{});
                CHECK(outside(sheet.shapes, sheet.extent.grown(-kMargin)) ==
                      std::vector<std::string>{});
            }
}

TEST_CASE("The page of marks says of a cord that it stretches, and of a screw where it goes") {
    wall::Project project = wall_with_stops();
    project.pieces.resize(1);
    const auto words = [&project] {
        return running_text(mark_sheets(project, assessed(project), {}));
    };
    CHECK(words().find("Cords stretch") == std::string::npos);
    project.pieces.front().hanger.type = wall::HangerType::cord_one_hook;
    CHECK(words().find("Cords stretch") != std::string::npos);
    project.pieces.front().fixing = wall::FixingTypeId{"screw"};
    CHECK(words().find("half the shank's thickness below the cross") != std::string::npos);
    const auto paper = running_text(templates(project, TemplateKind::pieces, Paper::a4));
    CHECK(paper.find("half the shank's thickness below the cross") != std::string::npos);
}
