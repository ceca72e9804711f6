#include "draw/paths.h"
#include "mounts/design/back_marks.h"
#include "mounts/design/cutting_words.h"
#include "mounts/design/rule_step.h"
#include "pages/clipped.h"
#include "pages/looking.h"
#include "pages/mount_job.h"
#include "pages/render.h"
#include "pages/sheet_mount.h"
#include "pages/sheet_template.h"
#include "support/command.h"
#include "support/mount_scenes.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <sstream>

using namespace wallwright;
using namespace wallwright::pages;
using units::LengthUnit;

namespace {

constexpr Paper kPapers[] = {Paper::a4, Paper::letter, Paper::a3};

/// As the sheets mark them.
mounts::BackMarks marks_of(const wall::Project& project, const mounts::MountDesign& design) {
    return mounts::back_marks(design, mounts::rule_step(project.unit));
}

/// The wall with this piece alone.
wall::Project only(const std::string& id) {
    wall::Project project = scenes::mounts_to_cut();
    std::erase_if(project.pieces, [&](const wall::Piece& one) { return one.id.text != id; });
    return project;
}

Shapes all_shapes(const std::vector<draw::PageDrawing>& sheets) {
    Shapes all;
    for (const draw::PageDrawing& sheet : sheets)
        all.insert(all.end(), sheet.shapes.begin(), sheet.shapes.end());
    return all;
}

/// Sheets whose title block says the scale 1:1.
std::vector<draw::PageDrawing> templates_in(const std::vector<draw::PageDrawing>& sheets) {
    std::vector<draw::PageDrawing> found;
    for (const draw::PageDrawing& sheet : sheets)
        if (test::has_text(sheet.shapes, "1:1"))
            found.push_back(sheet);
    return found;
}

/// Cuts are the only heavy strokes.
std::vector<Area> cuts_in(const Shapes& shapes) {
    std::vector<Area> cuts;
    for (const test::PagePath& path : test::shapes_in<test::PagePath>(shapes))
        if (path.stroke && path.stroke->width == 0.7)
            cuts.push_back(test::bounds_of(path));
    return cuts;
}

/// Words of all sheets, lines joined, so that broken sentences are found.
std::string running_text(const std::vector<draw::PageDrawing>& sheets) {
    std::string words = test::words_in(all_shapes(sheets));
    std::replace(words.begin(), words.end(), '\n', ' ');
    return words;
}

}  // namespace

TEST_CASE("Every step of cutting and of hanging has a box to tick, on the sheets of its mount") {
    const wall::Project project = only("kelp");
    const auto sheets = mount_sheets(project, Paper::a4);
    const std::string words = running_text(sheets);
    const mounts::MountDesign design = mount_jobs(project).front().design;
    std::size_t steps = 0;
    for (const auto& sentences : {mounts::cutting_steps(design, project.unit),
                                  mounts::hinging_steps(design, project.unit)}) {
        steps += sentences.size();
        for (const std::string& sentence : sentences)
            CHECK(words.find(sentence) != std::string::npos);
    }
    std::size_t boxes = 0;
    for (const test::PagePath& path : test::shapes_in<test::PagePath>(all_shapes(sheets)))
        if (path.closed && std::abs(test::bounds_of(path).width() - 3) < 1e-6 && !path.fill)
            ++boxes;
    CHECK(boxes == steps);
    for (const std::string& caution : mounts::knife_cautions(design))
        CHECK(words.find(caution) != std::string::npos);
}

TEST_CASE("Borders as cut and as seen stand on the sheet, and the sizes of every opening") {
    const wall::Project project = only("kelp");
    const auto sheets = mount_sheets(project, Paper::a4);
    const Shapes shapes = all_shapes(sheets);
    const mounts::MountDesign design = mount_jobs(project).front().design;
    const mounts::BackMarks marks = marks_of(project, design);
    const auto shown = [&](double mm) {
        return test::has_text(shapes, units::format_number(mm, project.unit));
    };
    for (const mounts::Borders& borders : {marks.cut, marks.seen, marks.lip}) {
        CHECK(shown(borders.left));
        CHECK(shown(borders.top));
        CHECK(shown(borders.bottom));
    }
    for (const mounts::LayerMarks& layer : marks.layers) {
        CHECK(shown(layer.windows.front().line.width()));
        CHECK(shown(layer.windows.front().face.height()));
    }
    CHECK(test::has_text(shapes, "layer 2, revealed by"));
    CHECK(test::has_text(shapes, "layer 2, its colour shown"));
    CHECK(shown(marks.layers[1].reveal));
    CHECK(shown(marks.layers[1].shown));
}

TEST_CASE("Each layer is drawn by itself, its cuts to the scale that is written over it") {
    const wall::Project project = only("chart");
    const auto sheets = mount_sheets(project, Paper::a4);
    const mounts::BackMarks marks = marks_of(project, mount_jobs(project).front().design);
    const Shapes shapes = all_shapes(sheets);
    CHECK(test::has_text(shapes, "Layer 1 of 3 (top), from behind, 1:10"));
    CHECK(test::has_text(shapes, "Layer 2 of 3, from behind, 1:10"));
    CHECK(test::has_text(shapes, "Layer 3 of 3 (at the print), from behind, 1:10"));
    const std::vector<Area> cuts = cuts_in(shapes);
    REQUIRE(cuts.size() == 12);
    for (const mounts::LayerMarks& layer : marks.layers)
        CHECK(std::ranges::count_if(cuts, [&](const Area& cut) {
                  return std::abs(cut.width() - layer.windows.front().line.width() / 10) < 1e-6;
              }) == 2);
    CHECK(templates_in(sheets).empty());
}

TEST_CASE("A board that fits one sheet is there at true size, whole and mirrored") {
    const wall::Project project = only("dune");
    const auto found = templates_in(mount_sheets(project, Paper::a4));
    REQUIRE(found.size() == 1);
    const mounts::MountDesign design = mount_jobs(project).front().design;
    const mounts::LayerMarks marks = marks_of(project, design).layers.front();
    const std::vector<Area> cuts = cuts_in(found.front().shapes);
    REQUIRE(cuts.size() == 4);
    Area blank{{1e9, 1e9}, {1e9, 1e9}};
    for (const test::PagePath& path : test::shapes_in<test::PagePath>(found.front().shapes)) {
        const Area box = test::bounds_of(path);
        if (path.closed && std::abs(box.width() - design.blank.width) < 1e-6)
            blank = box;
    }
    REQUIRE(blank.height() == Approx(design.blank.height));
    for (const mounts::WindowMarks& window : marks.windows)
        for (const double x : {window.line.min.x, window.line.max.x})
            CHECK(std::ranges::any_of(cuts, [&](const Area& cut) {
                return std::abs(cut.min.x - blank.min.x - x) < 1e-6 &&
                       std::abs(cut.max.x - blank.min.x - x) < 1e-6 &&
                       std::abs(cut.min.y - blank.min.y - window.line.min.y) < 1e-6 &&
                       std::abs(cut.height() - window.line.height()) < 1e-6;
            }));
}

// qpdf lays the page's own vectors open; what they measure, the printer prints.
TEST_CASE("The window of a template has its true size in the PDF's own vectors") {
    const wall::Project project = only("dune");
    const test::ScratchFolder scratch;
    test::write_whole(scratch.file("t.pdf"),
                      to_pdf(templates_in(mount_sheets(project, Paper::a4)), "t"));
    const auto open = test::run("qpdf --qdf --object-streams=disable " + scratch.file("t.pdf") +
                                " - | grep -aE ' (m|l) ?'");
    const mounts::LayerMarks marks =
        marks_of(project, mount_jobs(project).front().design).layers.front();
    const double wanted = marks.windows.front().line.width() / 25.4 * 72;
    std::vector<double> numbers;
    int found = 0;
    std::istringstream lines(open.out);
    for (std::string line; std::getline(lines, line);) {
        double x1 = 0;
        double y1 = 0;
        double x2 = 0;
        double y2 = 0;
        if (std::sscanf(line.c_str(), "%lf %lf m %lf %lf l", &x1, &y1, &x2, &y2) == 4)
            found += std::abs(std::abs(x2 - x1) - wanted) < 0.02 ? 1 : 0;
    }
    CHECK(found >= 2);
}

TEST_CASE("A board that fits two sheets is joined at a line, and together they show all of it") {
    const wall::Project project = only("shells");
    const auto job = mount_jobs(project).front();
    const auto sheets = template_sheets(job, 0, project.unit, Paper::a3);
    REQUIRE(sheets.size() == 2);
    CHECK(test::has_text(sheets[0].shapes, "A, joins B"));
    CHECK(test::has_text(sheets[1].shapes, "B, joins A"));
    for (const draw::PageDrawing& sheet : sheets) {
        const auto paths = test::shapes_in<test::PagePath>(sheet.shapes);
        CHECK(std::ranges::count_if(paths, [](const test::PagePath& path) {
                  return path.stroke && path.stroke->type == draw::LineType::long_dash_dotted;
              }) == 1);
    }
    // a window that both show counts on both, but none is missing
    double cut = 0;
    for (const draw::PageDrawing& sheet : sheets)
        for (const Area& one : cuts_in(sheet.shapes))
            cut += one.width() + one.height();
    double whole = 0;
    for (const mounts::WindowMarks& window : marks_of(project, job.design).layers.front().windows)
        whole += 2 * (window.line.width() + window.line.height());
    CHECK(cut > whole - 1e-6);
    CHECK(cut < whole + 12 * 12);
}

TEST_CASE("A board that two sheets do not hold, and a card without a window, have no template") {
    for (const std::string id : {"chart", "wreck"}) {
        const wall::Project project = only(id);
        CHECK(template_sheets(mount_jobs(project).front(), 0, project.unit, Paper::a3).empty());
    }
}

TEST_CASE("A window among several goes by one letter in the drawing, the table and the steps") {
    const wall::Project project = only("boats");
    const auto sheets = mount_sheets(project, Paper::a4);
    const std::string title = mount_jobs(project).front().design.prints[1].title;
    CHECK(test::has_text(all_shapes(sheets), "window b, at the back"));
    const std::string words = running_text(sheets);
    CHECK(words.find("For window b, " + title) != std::string::npos);
    CHECK(words.find("print b: " + title) != std::string::npos);
    CHECK(words.find("window 2") == std::string::npos);
}

TEST_CASE("The drawing's words say where a bevel's cuts begin and end") {
    CHECK(running_text(mount_sheets(only("kelp"), Paper::a4))
              .find("1.4 mm, before the first cross") != std::string::npos);
    CHECK(running_text(mount_sheets(only("stamp"), Paper::a4)).find("in at one cross and out at") !=
          std::string::npos);
}

TEST_CASE("Mounts that are cut alike share their sheets, which name all their pieces") {
    wall::Project project = only("stamp");
    const std::size_t alone = mount_sheets(project, Paper::a4).size();
    wall::Project twice = project;
    scenes::add_with_mount(twice, "seal", {130, 180}, project.mounts[4], {{40, 50}});
    REQUIRE(mount_jobs(twice).size() == 1);
    CHECK(titles_of(mount_jobs(twice).front()) == "Stamp and Seal");
    const auto sheets = mount_sheets(twice, Paper::a4);
    CHECK(sheets.size() == alone);
    CHECK(running_text(sheets).find("2 mounts, all cut alike: for Stamp and Seal.") !=
          std::string::npos);
    twice.mounts.back().overlap = 4;
    CHECK(mount_jobs(twice).size() == 2);
    twice.mounts.back() = twice.mounts[4];
    twice.mounts.back().id = {"seal"};
    twice.mounts.back().colour = {1, 2, 3};
    CHECK(mount_jobs(twice).size() == 2);
}

TEST_CASE("What hangs, what is only wished for and what has no print gets no cutting sheet") {
    wall::Project project = scenes::mounts_to_cut();
    const std::size_t all = mount_jobs(project).size();
    CHECK(all == project.pieces.size());
    project.pieces[0].state = wall::PieceState::hung;
    project.pieces[2].wished = true;
    project.pieces[3].print.reset();
    CHECK(mount_jobs(project).size() == all - 3);
    for (wall::Piece& piece : project.pieces)
        piece.state = wall::PieceState::hung;
    CHECK(mount_sheets(project, Paper::a4).empty());
}

TEST_CASE("Nothing on a mount's sheets runs into anything else or off the paper") {
    for (const Paper paper : kPapers)
        for (const LengthUnit unit : {LengthUnit::mm, LengthUnit::cm, LengthUnit::inch}) {
            wall::Project project = scenes::mounts_to_cut();
            project.unit = unit;
            int number = 0;
            for (const draw::PageDrawing& sheet : mount_sheets(project, paper)) {
                INFO("sheet " << ++number << " in " << units::name_of(unit));
                CHECK(test::collisions(sheet.shapes) == std::vector<std::string>{});
                CHECK(test::outside(sheet.shapes, sheet.extent.grown(-kMargin + 0.5)) ==
                      std::vector<std::string>{});
            }
        }
}

TEST_CASE("Lines are cut off at an area's edge, and what is not wholly inside loses its fill") {
    using draw::Ink;
    const draw::Stroke stroke{{Ink::outline}, 0.25};
    const Area area{{10, 10}, {20, 20}};
    const Shapes shapes{
        draw::line<geometry::Page>({0, 15}, {15, 15}, stroke),
        draw::line<geometry::Page>({0, 0}, {5, 5}, stroke),
        draw::box(Area{{5, 12}, {15, 14}}, {draw::Paint{Ink::shade}, stroke}),
        draw::box(Area{{12, 12}, {14, 14}}, {draw::Paint{Ink::shade}, std::nullopt}),
        draw::circle<geometry::Page>({10, 10}, 2, {std::nullopt, stroke}),
        text_at({18, 15}, "wide words", {2.5, false}),
        text_at({11, 19}, "in", {2.5, false})};
    const Shapes kept = clipped(shapes, area);
    const auto paths = test::shapes_in<test::PagePath>(kept);
    REQUIRE(paths.size() == 5);  // the line, three sides of the first box, the second box
    CHECK(test::bounds_of(paths[0]) == Area{{10, 15}, {15, 15}});
    for (std::size_t i = 1; i < 4; ++i) {
        CHECK_FALSE(paths[i].fill);
        CHECK(area.contains(test::bounds_of(paths[i]).min));
    }
    CHECK(paths[4].fill);
    const auto texts = test::shapes_in<test::PageText>(kept);
    REQUIRE(texts.size() == 1);
    CHECK(texts.front().text == "in");
}
