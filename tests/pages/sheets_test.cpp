#include "pages/sheets.h"

#include "pages/render.h"
#include "pages/sheet_card.h"
#include "support/command.h"
#include "support/gallery.h"
#include "support/mount_scenes.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <cmath>
#include <cstdio>
#include <sstream>

using namespace wallwright;
using namespace wallwright::pages;
using test::run;

namespace {

struct Printed {
    wall::Project project;
    rules::Assessment assessment;
    std::string pdf;
};

Printed print(wall::Project project, Paper paper) {
    project.title = "Attic, east";
    const rules::Assessment assessment = rules::assess(project, scenes::small_catalogue());
    return {project, assessment, to_pdf(sheets(project, assessment, {paper, ""}), project.title)};
}

/// "Page size" in points, as poppler reads it.
std::vector<std::pair<double, double>> page_sizes(const std::string& file) {
    std::vector<std::pair<double, double>> sizes;
    std::istringstream lines(run("pdfinfo -f 1 -l 99 " + file).out);
    for (std::string line; std::getline(lines, line);) {
        double width = 0;
        double height = 0;
        if (std::sscanf(line.c_str(), "Page %*d size: %lf x %lf", &width, &height) == 2)
            sizes.emplace_back(std::min(width, height), std::max(width, height));
    }
    return sizes;
}

}  // namespace

// libpaper's table of sizes, in points, is not ours.
TEST_CASE("Pages are as large as libpaper says the paper is") {
    const test::ScratchFolder scratch;
    for (const auto& [paper, name] :
         {std::pair(Paper::a4, "a4"), std::pair(Paper::letter, "letter"),
          std::pair(Paper::a3, "a3")}) {
        test::write_whole(scratch.file("out.pdf"), print(scenes::attic_gallery(), paper).pdf);
        double width = 0;
        double height = 0;
        REQUIRE(std::sscanf(run(fmt::format("paperconf -p {} -s", name)).out.c_str(), "%lf %lf",
                            &width, &height) == 2);
        const auto sizes = page_sizes(scratch.file("out.pdf"));
        REQUIRE(sizes.size() >= 4);
        for (const auto& [shorter, longer] : sizes) {
            CHECK(shorter == Approx(width).margin(0.1));
            CHECK(longer == Approx(height).margin(0.1));
        }
    }
}

// qpdf lays the page's own vectors open; what they measure, the printer prints.
TEST_CASE("The bars to check the printer by are 100 mm and 4 in long in the PDF's own vectors") {
    const test::ScratchFolder scratch;
    test::write_whole(scratch.file("out.pdf"), print(scenes::attic_gallery(), Paper::a4).pdf);
    const auto open = run("qpdf --qdf --object-streams=disable " + scratch.file("out.pdf") +
                          " - | grep -aE ' re( |$)'");
    int millimetres = 0;
    int inches = 0;
    std::istringstream lines(open.out);
    for (std::string line; std::getline(lines, line);) {
        double width = 0;
        if (std::sscanf(line.c_str(), "%*f %*f %lf", &width) != 1)
            continue;
        const double mm = width / 72 * 25.4;
        millimetres += std::abs(mm - 100) < 0.05 ? 1 : 0;
        inches += std::abs(mm - 101.6) < 0.05 ? 1 : 0;
    }
    CHECK(millimetres >= 4);  // one a page
    CHECK(inches == millimetres);
}

TEST_CASE("Every mark of the table stands on the sheets, with both its measures") {
    const test::ScratchFolder scratch;
    const Printed printed = print(scenes::attic_gallery(), Paper::a4);
    test::write_whole(scratch.file("out.pdf"), printed.pdf);
    const std::string text = run("pdftotext -layout " + scratch.file("out.pdf") + " -").out;
    REQUIRE_FALSE(printed.assessment.marks.marks.empty());
    for (const hanging::Mark& mark : printed.assessment.marks.marks) {
        CHECK(text.find(units::format_number(mark.across, printed.project.unit)) !=
              std::string::npos);
        CHECK(text.find(units::format_number(mark.up, printed.project.unit)) != std::string::npos);
        CHECK(text.find(mark.what) != std::string::npos);
    }
    CHECK(text.find("Attic, east") != std::string::npos);
    CHECK(text.find("electrician") != std::string::npos);
}

TEST_CASE("The same wall gives the same bytes") {
    CHECK(print(scenes::attic_gallery(), Paper::a4).pdf ==
          print(scenes::attic_gallery(), Paper::a4).pdf);
}

TEST_CASE("Titles in any script print") {
    wall::Project project = scenes::attic_gallery();
    project.pieces.front().title = "Φύκια と 砂丘, élan";
    const test::ScratchFolder scratch;
    test::write_whole(scratch.file("out.pdf"), print(project, Paper::letter).pdf);
    CHECK(run("pdftotext " + scratch.file("out.pdf") + " -").out.find("élan") != std::string::npos);
}

TEST_CASE("Sixty pieces run over as many pages as they need") {
    const test::ScratchFolder scratch;
    const Printed printed = print(scenes::salon_of(60), Paper::a4);
    test::write_whole(scratch.file("out.pdf"), printed.pdf);
    CHECK(page_sizes(scratch.file("out.pdf")).size() > 6);
    CHECK(run("qpdf --check " + scratch.file("out.pdf")).status == 0);
}

TEST_CASE("A picture that would be too large is refused, and a fair one is a PNG") {
    const wall::Project project = scenes::attic_gallery();
    const auto page =
        elevation_page(project, rules::assess(project, scenes::small_catalogue()), "");
    CHECK(to_png(page, 2).value().starts_with("\x89PNG"));
    CHECK_FALSE(to_png(page, 1000).has_value());
    CHECK(to_svg(page).find("<svg") != std::string::npos);
}

TEST_CASE("Mounts and card come only where a mount is to be cut, and after all else") {
    wall::Project project = scenes::mounts_to_cut();
    const rules::Assessment assessment = rules::assess(project, scenes::small_catalogue());
    SheetOptions options;
    options.card = card_plan_for_sheets(project, [] { return true; });
    const auto count = [&](std::vector<SheetPart> parts) {
        options.parts = std::move(parts);
        return sheets(project, assessment, options).size();
    };
    const std::size_t all = count({});
    const std::size_t wall = count({SheetPart::elevation, SheetPart::marks, SheetPart::loads,
                                    SheetPart::findings, SheetPart::list});
    CHECK(count({SheetPart::mounts}) > 0);
    CHECK(count({SheetPart::card}) > 0);
    CHECK(all == wall + count({SheetPart::card, SheetPart::mounts}));
    CHECK(SheetPart::card < SheetPart::mounts);  // it is cut first
    for (wall::Piece& piece : project.pieces)
        piece.state = wall::PieceState::hung;
    options.card = card_plan_for_sheets(project, [] { return true; });
    CHECK(count({SheetPart::mounts, SheetPart::card}) == 0);
}
