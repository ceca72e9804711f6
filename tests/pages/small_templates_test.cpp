#include "pages/point_papers.h"
#include "pages/render.h"
#include "pages/story_strips.h"
#include "pages/template_reading.h"
#include "pages/true_page.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace wallwright;
using namespace wallwright::pages;
using namespace wallwright::test;
using geometry::Rect;
using geometry::Wall;

TEST_CASE("Every mark and fixing is on a small paper, its edges the frame's where these are near") {
    const wall::Project project = wall_to_hang();
    for (const TrueDrawing& piece : true_pieces(project, assessed(project))) {
        INFO(piece.name);
        const auto papers = point_papers(piece, {180, 220});
        const Rect<Wall>& frame = piece.places.front();
        for (const Rect<Wall>& point : piece.points) {
            Rect<Wall> inside = point;  // a cross at a corner reaches over the frame
            inside.min = {std::max(point.min.x, frame.min.x), std::max(point.min.y, frame.min.y)};
            inside.max.x = std::min(point.max.x, frame.max.x);
            if (point.min.x < frame.min.x || point.max.x > frame.max.x)
                inside.max.y = std::min(point.max.y, frame.max.y);
            CHECK(std::ranges::any_of(papers, [&](const Rect<Wall>& paper) {
                return paper.grown(1e-6).contains(inside.min) &&
                       paper.grown(1e-6).contains(inside.max);
            }));
        }
        CHECK(std::ranges::any_of(
            papers, [&](const Rect<Wall>& paper) { return paper.max.y >= frame.top() - 1e-6; }));
        for (const Rect<Wall>& paper : papers) {
            CHECK(paper.width() <= 180 + 1e-6);
            CHECK(paper.height() <= 220 + 1e-6);
        }
    }
    const auto sheets = templates(project, TemplateKind::points, Paper::a4);
    CHECK(sheets.size() < 8);
    for (const hanging::Mark& mark : assessed(project).marks.marks)
        CHECK(running_text(sheets).find(std::to_string(mark.number)) != std::string::npos);
}

TEST_CASE("A hook on a small paper is as far below the frame's edge in the PDF as on the wall") {
    wall::Project project = scenes::wall_of(3000, 2600);
    scenes::add_piece(project, "gull", {700, 1300}, {400, 500}).hanger.type =
        wall::HangerType::sawtooth;
    const hanging::Mark mark = assessed(project).marks.marks.front();
    const auto pages =
        lines_in_pdf(to_pdf(templates(project, TemplateKind::points, Paper::letter), "t"));
    REQUIRE(pages.size() == 1);
    const auto crosses = crosses_in(pages.front(), kMarkStroke, 12.01);
    REQUIRE(crosses.size() == 1);
    const auto edges = of_width(pages.front(), kOutlineStroke.width);
    CHECK(std::ranges::any_of(edges, [&](const PdfLine& edge) {
        return level(edge) &&
               std::abs(crosses.front().y - edge.from.y - (1800 - mark.at.y)) < kExact;
    }));
}

TEST_CASE("A strip holds all marks of its row at their true distances, band joined to band") {
    for (const Paper paper : kPapers) {
        wall::Project project = scenes::wall_of(4000, 2600);
        for (int i = 0; i < 4; ++i)
            scenes::add_piece(project, "p" + std::to_string(i), {300.0 + 371.5 * i, 1300},
                              {300, 400})
                .hanger.type = wall::HangerType::two_rings;
        rules::Assessment assessment = assessed(project);
        std::vector<const hanging::Mark*> row;
        for (const hanging::Mark& mark : assessment.marks.marks)
            row.push_back(&mark);
        std::ranges::sort(row, {}, [](const hanging::Mark* mark) { return mark->at.x; });
        assessment.marks.rows = {{}};
        for (const hanging::Mark* mark : row)
            assessment.marks.rows.front().push_back(mark->number);
        const auto sheets = story_strip_pages(project, assessment, paper);
        // Bands go down the page and from page to page; each has its marks left to right.
        std::vector<Spot> marks;
        std::vector<Spot> joins;
        double below = 0;
        for (const auto& lines : lines_in_pdf(to_pdf(sheets, "t"))) {
            for (const auto& [stroke, reach, into] :
                 {std::tuple(kMarkStroke, 24.01, &marks),
                  std::tuple(kJoinStroke, 2 * kJoinReach + 0.01, &joins)})
                for (const Spot at : crosses_in(lines, stroke, reach))
                    into->push_back({at.x, at.y + below});
            below += 1000;
        }
        // Each band's marks moved to the first's by the joins between.
        std::map<int, std::pair<double, double>> ends;  // of a band: x of its joins
        const auto band_of = [&](double y) {
            double top = 1e9;
            for (const Spot mark : marks)
                if (std::abs(mark.y - y) < 12)
                    top = std::min(top, mark.y);
            return static_cast<int>(std::lround(top == 1e9 ? y : top));
        };
        for (const Spot join : joins) {
            auto [end, added] = ends.try_emplace(band_of(join.y), join.x, join.x);
            end->second.first = std::min(end->second.first, join.x);
            end->second.second = std::max(end->second.second, join.x);
        }
        std::vector<double> across;
        double moved = 0;
        double last_join = 0;
        bool first = true;
        for (const auto& [band, end] : ends) {
            moved = first ? 0 : last_join - end.first;
            last_join = moved + end.second;
            first = false;
            for (const Spot mark : marks)
                if (band_of(mark.y) == band)
                    across.push_back(mark.x + moved);
        }
        REQUIRE(ends.size() > 1);
        std::ranges::sort(across);
        across.erase(std::unique(across.begin(), across.end(),
                                 [](double a, double b) { return std::abs(a - b) < 0.2; }),
                     across.end());
        REQUIRE(across.size() == row.size());
        for (std::size_t i = 1; i < row.size(); ++i)
            CHECK(across[i] - across[0] == Approx(row[i]->at.x - row[0]->at.x).margin(2 * kExact));
    }
}

TEST_CASE("A wall without a row says so in place of strips") {
    wall::Project project = scenes::wall_of(3000, 2600);
    scenes::add_piece(project, "gull", {700, 1300}, {400, 500});
    rules::Assessment assessment = assessed(project);
    assessment.marks.rows.clear();
    const auto sheets = story_strip_pages(project, assessment, Paper::a4);
    REQUIRE(sheets.size() == 1);
    CHECK(running_text(sheets).find("no row") != std::string::npos);
}

TEST_CASE("The whole group is one page as large as it is, with all outlines in place") {
    const wall::Project project = wall_to_hang();
    const auto sheets = templates(project, TemplateKind::group, Paper::a4);
    REQUIRE(sheets.size() == 1);
    CHECK(sheets.front().extent.width() > 3050);
    CHECK(running_text(sheets).find("hangs already") != std::string::npos);
    const auto lines = lines_in_pdf(to_pdf(sheets, "t")).front();
    const Area outlines = bounds_of(of_width(lines, kOutlineStroke.width));
    CHECK(outlines.width() == Approx(2700 + 210 - 200).margin(kExact));
    CHECK(outlines.height() == Approx(1900 - 1000).margin(kExact));
    for (const hanging::Mark& mark : assessed(project).marks.marks)
        CHECK(has_spot(crosses_in(lines, kMarkStroke, 12.01),
                       {outlines.min.x + mark.at.x - 200, outlines.max.y - (mark.at.y - 1000)}));
}

TEST_CASE("A group longer than a page of a PDF may be comes on several that are joined") {
    wall::Project project = scenes::wall_of(9000, 2600);
    scenes::add_piece(project, "kelp", {300, 1200}, {300, 400});
    scenes::add_piece(project, "dune", {8200, 1200}, {300, 400});
    const auto sheets = templates(project, TemplateKind::group, Paper::a4);
    REQUIRE(sheets.size() == 2);
    for (const draw::PageDrawing& sheet : sheets)
        CHECK(sheet.extent.width() <= 5080);
    const Area outlines = bounds_of(of_width(taped(sheets), kOutlineStroke.width));
    CHECK(outlines.width() == Approx(8200).margin(kExact));
}

TEST_CASE("The number of a mark stands on a page that is full, on its plate inside the page") {
    WordRoom room({{0, 0}, {60, 60}});
    room.take({{0, 0}, {60, 60}});
    for (const Spot at : {Spot{30, 30}, Spot{59, 59}, Spot{1, 1}}) {
        Shapes shapes;
        add_tag(shapes, room, {{}, 2, "12", {"1312 mm across"}}, at);
        REQUIRE(shapes_in<PageText>(shapes).size() == 1);
        CHECK(has_text(shapes, "12"));
        CHECK(outside(shapes, room.area()).empty());
    }
    Shapes none;
    add_tag(none, room, {{}, 2, "", {"1312 mm across"}}, {30, 30});
    CHECK(none.empty());
}
