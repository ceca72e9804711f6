#include "pages/sheet_hanging_templates.h"
#include "pages/template_reading.h"
#include "pages/tile_pages.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::pages;
using namespace wallwright::test;
using geometry::Rect;
using geometry::Wall;
using units::LengthUnit;

namespace {

/// The paper in one piece holds the outline and every fixing of the piece at true size.
void check_whole(const wall::Project& project, const TrueDrawing& piece,
                 const std::vector<draw::PageDrawing>& sheets) {
    const rules::Assessment assessment = assessed(project);
    const std::vector<PdfLine> lines = taped(sheets);
    const std::vector<PdfLine> outline = of_width(lines, kOutlineStroke.width);
    REQUIRE_FALSE(outline.empty());
    const Area paper = bounds_of(outline);
    const Rect<Wall>& place = piece.places.front();
    CHECK(paper.width() == Approx(place.width()).margin(kExact));
    CHECK(paper.height() == Approx(place.height()).margin(kExact));
    CHECK(cover(outline, paper.min, {paper.max.x, paper.min.y}));
    CHECK(cover(outline, {paper.min.x, paper.max.y}, paper.max));
    CHECK(cover(outline, paper.min, {paper.min.x, paper.max.y}));
    CHECK(cover(outline, {paper.max.x, paper.min.y}, paper.max));
    const auto on_paper = [&](geometry::Point<Wall> at) {
        return Spot{paper.min.x + at.x - place.left(), paper.min.y + place.top() - at.y};
    };
    const std::vector<Spot> crosses = crosses_in(lines, kMarkStroke, 12.01);
    for (const hanging::Mark& mark : assessment.marks.marks) {
        const wall::Piece* hung = wall::find(project, mark.piece);
        if (wall::place_of(project, *hung) == place)
            CHECK(has_spot(crosses, on_paper(mark.at)));
    }
    const std::vector<PdfLine> strips = of_width(lines, 0.35);
    for (const hanging::Hanging& hanging : assessment.hangings)
        for (const hanging::Fixing& fixing : hanging.fixings) {
            const Rect<Wall> covered = hanging::covered_by(fixing);
            if (fixing.kind != wall::FixingKind::strip_pair || !place.contains(covered.min))
                continue;
            const Spot low = on_paper(covered.min);
            const Spot high = on_paper(covered.max);
            CHECK(cover(strips, low, {high.x, low.y}));
            CHECK(cover(strips, high, {low.x, high.y}));
        }
}

/// Its pages among all, by the name in the title block.
std::vector<draw::PageDrawing> pages_of(const std::vector<draw::PageDrawing>& sheets,
                                        const TrueDrawing& piece) {
    std::vector<draw::PageDrawing> found;
    for (const draw::PageDrawing& sheet : sheets)
        if (has_text(sheet.shapes, piece.name))
            found.push_back(sheet);
    return found;
}

}  // namespace

TEST_CASE("Pages laid on each other at their join marks show each piece whole, at true size") {
    for (const LengthUnit unit : {LengthUnit::mm, LengthUnit::inch})
        for (const Paper paper : kPapers) {
            wall::Project project = wall_to_hang();
            project.unit = unit;
            const auto pieces = true_pieces(project, assessed(project));
            REQUIRE(pieces.size() == 5);
            const auto sheets = templates(project, TemplateKind::pieces, paper);
            std::size_t seen = 0;
            for (const TrueDrawing& piece : pieces) {
                INFO(piece.name);
                const auto own = pages_of(sheets, piece);
                REQUIRE_FALSE(own.empty());
                check_whole(project, piece, own);
                seen += own.size();
            }
            CHECK(seen == sheets.size());
        }
}

TEST_CASE("Nothing on a template runs into anything else or over the margins") {
    for (const Paper paper : kPapers)
        for (const LengthUnit unit : {LengthUnit::mm, LengthUnit::cm, LengthUnit::inch})
            for (const TemplateKind kind : {TemplateKind::pieces, TemplateKind::points,
                                            TemplateKind::strips, TemplateKind::group}) {
                wall::Project project = wall_to_hang();
                project.unit = unit;
                int number = 0;
                for (const draw::PageDrawing& sheet : templates(project, kind, paper)) {
                    INFO("sheet " << ++number << " of " << wall::name_of(kind) << " in "
                                  << units::name_of(unit));
                    CHECK(collisions(sheet.shapes) == std::vector<std::string>{});
                    CHECK(outside(sheet.shapes, sheet.extent.grown(-kMargin)) ==
                          std::vector<std::string>{});
                }
            }
}

TEST_CASE("The blank inside of a large frame is left out, and the page says so") {
    wall::Project project = scenes::wall_of(4000, 2600);
    scenes::add_piece(project, "chart", {300, 700}, {1200, 900}).hanger.type =
        wall::HangerType::two_rings;
    const auto piece = true_pieces(project, assessed(project)).front();
    const TilePlan plan = tile_plan(project, piece, Paper::a4);
    CHECK(static_cast<int>(plan.printed.size()) < plan.tiling.rows * plan.tiling.columns);
    const auto sheets = templates(project, TemplateKind::pieces, Paper::a4);
    CHECK(sheets.size() == plan.printed.size());
    CHECK(running_text(sheets).find("Dotted on the map: blank inside, not printed.") !=
          std::string::npos);
    check_whole(project, piece, sheets);
}

TEST_CASE("A frame that would take too many pages has papers for its points instead") {
    wall::Project project = scenes::wall_of(6000, 3000);
    scenes::add_piece(project, "map", {300, 400}, {3000, 1800}).hanger.type =
        wall::HangerType::two_rings;
    scenes::add_piece(project, "kelp", {4000, 1200}, {200, 250});
    const auto sheets = templates(project, TemplateKind::pieces, Paper::a4);
    CHECK(sheets.size() < 5);
    CHECK(running_text(sheets).find("A Map would take ") != std::string::npos);
    CHECK(templates(project, TemplateKind::pieces, Paper::a3).size() > 20);
}

TEST_CASE("What hangs, waits or has no mark has no template") {
    wall::Project project = scenes::wall_of(3000, 2600);
    scenes::add_hung(project, "kelp", {300, 1200}, {300, 400});
    scenes::add_waiting(project, "dune", {300, 400});
    for (const TemplateKind kind :
         {TemplateKind::pieces, TemplateKind::points, TemplateKind::strips, TemplateKind::group})
        CHECK(templates(project, kind, Paper::a4).empty());
}
