#include "draw/mount_back.h"

#include "draw/looking.h"
#include "mounts/design/rule_step.h"
#include "mounts/design_cases.h"
#include "support/mount_scenes.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <rapidcheck/catch.h>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Rect;
using geometry::Wall;
using mounts::MountDesign;
using units::LengthUnit;

namespace {

constexpr LengthUnit kUnits[] = {LengthUnit::mm, LengthUnit::cm, LengthUnit::inch};

MountDesign design_of(const std::string& id) {
    const wall::Project project = scenes::mounts_to_cut();
    const auto design = mounts::design_of(project, *wall::find(project, wall::PieceId{id}));
    REQUIRE(design);
    return *design;
}

/// As the drawing marks it.
mounts::BackMarks marked(const MountDesign& design) {
    return mounts::back_marks(design, mounts::rule_step(LengthUnit::mm));
}

WallDrawing back_of(const MountDesign& design, double scale, std::size_t layer = 0,
                    LengthUnit unit = LengthUnit::mm) {
    return mount_back(design, layer, unit, {scale, true, {}});
}

/// Straight lines of this width, each from end to end.
std::vector<Rect<Wall>> lines_of_width(const WallDrawing& drawing, double width, Ink ink) {
    std::vector<Rect<Wall>> found;
    for (const test::WallPath& path : test::shapes_in<test::WallPath>(drawing.shapes))
        if (path.stroke && path.stroke->width == width && path.stroke->paint.ink == ink &&
            path.steps.size() == 1)
            found.push_back(test::bounds_of(path));
    return found;
}

}  // namespace

TEST_CASE("The cuts go from corner cross to corner cross and never to the edge of the blank") {
    const MountDesign design = design_of("boats");
    const WallDrawing drawing = back_of(design, 0.2);
    const auto cuts = lines_of_width(drawing, 0.7, Ink::outline);
    REQUIRE(cuts.size() == 12);
    const mounts::BackMarks marks = marked(design);
    for (const mounts::WindowMarks& window : marks.layers.front().windows) {
        const Rect<Wall> line{{window.line.min.x, design.blank.height - window.line.max.y},
                              {window.line.max.x, design.blank.height - window.line.min.y}};
        const auto along = std::count_if(cuts.begin(), cuts.end(), [&](const Rect<Wall>& cut) {
            return line.grown(1e-6).contains(cut.min) && line.grown(1e-6).contains(cut.max);
        });
        CHECK(along == 4);
    }
}

TEST_CASE("Pencil lines cross at each corner and end on the board, off the next window") {
    for (const std::string id : {"kelp", "boats", "stamp", "shells"}) {
        INFO(id);
        const MountDesign design = design_of(id);
        const auto pencil = lines_of_width(back_of(design, 0.2), 0.25, Ink::mark);
        CHECK(pencil.size() == 4 * design.prints.size());
        const auto board = Rect<Wall>::at({0, 0}, design.blank).grown(-1);
        for (const Rect<Wall>& line : pencil) {
            CHECK(board.contains(line.min));
            CHECK(board.contains(line.max));
        }
        const mounts::LayerMarks marks = marked(design).layers.front();
        for (const mounts::WindowMarks& window : marks.windows)
            for (const auto& cross : window.crosses) {
                const geometry::Point<Wall> at{cross.x, design.blank.height - cross.y};
                CHECK(std::count_if(pencil.begin(), pencil.end(), [&](const Rect<Wall>& line) {
                          return line.grown(1e-6).contains(at) && line.min.x < at.x + 1e-6 &&
                                 line.max.x - line.min.x + line.max.y - line.min.y > 1;
                      }) == 2);
            }
    }
}

TEST_CASE("The back is the front mirrored: a window at the left is marked at the right") {
    MountDesign design = design_of("shells");
    const auto cuts = lines_of_width(back_of(design, 1), 0.7, Ink::outline);
    const Rect<mounts::Front> first =
        mounts::mirrored(marked(design).layers.front().windows.front().line, design.blank.width);
    CHECK(std::any_of(cuts.begin(), cuts.end(), [&](const Rect<Wall>& cut) {
        return std::abs(cut.max.x - (design.blank.width - first.min.x)) < 1e-6 &&
               std::abs(cut.max.y - (design.blank.height - first.min.y)) < 1e-6;
    }));
}

TEST_CASE("Every distance from the blank's own edges to a line is there as a figure") {
    for (const LengthUnit unit : kUnits)
        for (const std::string id : {"kelp", "boats", "wreck", "chart", "stamp"}) {
            const MountDesign design = design_of(id);
            const mounts::BackMarks marks = mounts::back_marks(design, mounts::rule_step(unit));
            for (std::size_t layer = 0; layer < marks.layers.size(); ++layer) {
                const WallDrawing drawing = back_of(design, 0.2, layer, unit);
                const auto shown = [&](double mm) {
                    return test::count_text(drawing, units::format_number(mm, unit)) > 0;
                };
                INFO(id << " layer " << layer << " in " << units::name_of(unit));
                for (const mounts::WindowMarks& window : marks.layers[layer].windows) {
                    CHECK(shown(window.from_edges.left));
                    CHECK(shown(window.from_edges.right));
                    CHECK(shown(window.from_edges.top));
                    CHECK(shown(window.from_edges.bottom));
                }
                CHECK(shown(marks.blank.width));
                CHECK(shown(marks.blank.height));
            }
        }
}

TEST_CASE("A border in sixteenths has its figure where it is too narrow to read along the line") {
    wall::Mount mount;
    mount.by_hand = wall::FromCorner{40, 40};
    mount.edge = wall::WindowEdge::straight;
    // 14 1/8 x 18 1/16 in with 1 15/16 in below.
    const MountDesign design =
        mounts::design_mount(mounts::frame_around({226 * 1.5875, 289 * 1.5875}), mount,
                             {mounts::test::print_of("kelp", 289.4, 379.6)});
    const WallDrawing drawing = back_of(design, 0.2, 0, LengthUnit::inch);
    CHECK(test::count_text(
              drawing,
              units::format_number(mounts::back_marks(design, mounts::rule_step(LengthUnit::inch))
                                       .layers.front()
                                       .windows.front()
                                       .from_edges.bottom,
                                   LengthUnit::inch)) > 0);
}

TEST_CASE("Both diagonals stand beside the board and in or below each window") {
    const MountDesign design = design_of("chart");
    const mounts::LayerMarks marks = marked(design).layers.front();
    const WallDrawing drawing = back_of(design, 0.2);
    const auto words = [](double mm) {
        return fmt::format("both diagonals {}", units::format_number(mm, LengthUnit::mm));
    };
    CHECK(test::count_text(drawing, fmt::format("blank: {}", words(marks.diagonal))) == 1);
    CHECK(test::count_text(drawing, words(marks.windows.front().diagonal)) == 1);
    const MountDesign small = design_of("stamp");
    CHECK(test::count_text(
              back_of(small, 0.2),
              "Stamp: " + words(marked(small).layers.front().windows.front().diagonal)) == 1);
}

TEST_CASE("Cuts are numbered in their order where the window has room") {
    const WallDrawing drawing = back_of(design_of("boats"), 0.2);
    for (const char* number : {"1", "2", "3", "4"})
        CHECK(test::count_text(drawing, number) == 3);
    CHECK(test::count_text(back_of(design_of("stamp"), 0.1), "1") == 0);
    // Neither is there an arrow that a number would be missing from.
    const auto filled = [](const WallDrawing& one) {
        const auto paths = test::shapes_in<test::WallPath>(one.shapes);
        return std::count_if(paths.begin(), paths.end(), [](const test::WallPath& path) {
            return path.fill && path.fill->ink == Ink::outline;
        });
    };
    CHECK(filled(back_of(design_of("boats"), 0.2)) == 1 + 2 * 12);  // and the one that points up
    CHECK(filled(back_of(design_of("stamp"), 0.1)) == 1);
}

TEST_CASE("Where a bevel comes out at the face is a hidden line, of a straight cut there is none") {
    const auto dashed = [](const std::string& id, double scale) {
        return test::count_lines(back_of(design_of(id), scale), LineType::dashed);
    };
    CHECK(dashed("kelp", 1) == 1);
    CHECK(dashed("stamp", 1) == 0);
    CHECK(dashed("kelp", 0.1) == 0);  // it could not be told from the cut
}

TEST_CASE("A floating print's card shows its face, with the two corners to mark") {
    const MountDesign design = design_of("wreck");
    const WallDrawing drawing = back_of(design, 0.2);
    CHECK(test::count_text(drawing, "upper edge, face up") == 1);
    CHECK(lines_of_width(drawing, 0.7, Ink::outline).empty());
    const Rect<mounts::Front> place = marked(design).hinges.front().place;
    int corners = 0;
    for (const test::WallPath& path : test::shapes_in<test::WallPath>(drawing.shapes))
        if (path.stroke && path.stroke->paint.ink == Ink::mark) {
            const geometry::Point<Wall> corner = path.steps.front().to;
            CHECK(corner.y == Approx(design.blank.height - place.min.y));
            CHECK((std::abs(corner.x - place.min.x) < 1e-6 ||
                   std::abs(corner.x - place.max.x) < 1e-6));
            ++corners;
        }
    CHECK(corners == 2);
    CHECK(test::count_text(back_of(design_of("kelp"), 0.2), "upper edge, face down") == 1);
}

TEST_CASE("No figure on a board lies on another or out of the drawing") {
    for (const LengthUnit unit : kUnits)
        for (const double scale : {0.1, 0.2, 0.5, 1.0})
            for (const std::string id : {"kelp", "boats", "wreck", "chart", "stamp", "shells"}) {
                const MountDesign design = design_of(id);
                for (std::size_t layer = 0; layer < design.layers.size(); ++layer) {
                    INFO(id << " at " << scale << " in " << units::name_of(unit));
                    CHECK(test::clashes(back_of(design, scale, layer, unit), scale) ==
                          std::vector<std::string>{});
                }
            }
}

TEST_CASE("Whatever a mount measures, the figures on its boards keep off each other") {
    rc::prop("at any scale and in any unit", []() {
        const mounts::test::Case one = mounts::test::some_case();
        const MountDesign design = one.design();
        const double scale = *rc::gen::element(0.1, 0.2, 0.5, 1.0);
        const LengthUnit unit =
            *rc::gen::elementOf(std::vector(std::begin(kUnits), std::end(kUnits)));
        for (std::size_t layer = 0; layer < design.layers.size(); ++layer)
            RC_ASSERT(test::clashes(back_of(design, scale, layer, unit), scale) ==
                      std::vector<std::string>{});
    });
}

TEST_CASE("Without measures only what is pencilled and cut is drawn") {
    const WallDrawing drawing = mount_back(design_of("kelp"), 0, LengthUnit::mm, {1, false, {}});
    CHECK(test::texts_in(drawing).size() == 4);  // the cuts' numbers
    CHECK(drawing.extent.width() == Approx(470));
}

TEST_CASE("What is drawn of a board changes only on purpose") {
    std::string text;
    for (const std::string id : {"kelp", "boats", "wreck", "shells"})
        text += fmt::format("{}\n{}\n", id, to_text(back_of(design_of(id), 0.2)));
    test::check_golden("mount_back.txt", text);
}
