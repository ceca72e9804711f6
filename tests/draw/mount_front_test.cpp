#include "draw/mount_front.h"

#include "draw/labels.h"
#include "draw/looking.h"
#include "mounts/design_cases.h"
#include "support/mount_scenes.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <rapidcheck/catch.h>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Rect;
using geometry::Wall;
using mounts::MountDesign;

namespace {

constexpr units::LengthUnit kUnits[] = {units::LengthUnit::mm, units::LengthUnit::cm,
                                        units::LengthUnit::inch};

MountDesign design_for(const wall::Project& project, const wall::Piece& piece) {
    const auto design = mounts::design_of(project, piece);
    REQUIRE(design);
    return *design;
}

WallDrawing front_of(const wall::Project& project, const wall::Piece& piece, double scale) {
    return mount_front(project, piece, design_for(project, piece), {scale, true, {}});
}

}  // namespace

TEST_CASE("A mount's front gives each border as seen on the card and as cut outside the frame") {
    const wall::Project project = scenes::mounts_to_cut();
    const wall::Piece& kelp = project.pieces.front();
    const MountDesign design = design_for(project, kelp);
    const WallDrawing drawing = front_of(project, kelp, 0.3);
    const auto shown = [&](double mm) {
        return test::count_text(drawing, units::format_number(mm, project.unit));
    };
    CHECK(shown(design.seen.left) == 2);
    CHECK(shown(design.seen.top) == 1);
    CHECK(shown(design.seen.bottom) == 1);
    CHECK(shown(design.cut.left) == 2);
    CHECK(shown(design.cut.top) == 1);
    CHECK(shown(design.cut.bottom) == 1);
    CHECK(shown(500) == 1);
    CHECK(shown(400) == 1);
}

TEST_CASE("The chain below a row of windows has its borders, its windows and its bars") {
    const wall::Project project = scenes::mounts_to_cut();
    const WallDrawing drawing = front_of(project, project.pieces[1], 0.4);
    CHECK(test::count_text(drawing, "85") == 2);
    CHECK(test::count_text(drawing, "120") == 3);
    CHECK(test::count_text(drawing, "20") == 2);
}

TEST_CASE("Behind its windows a mount shows what it covers as hidden lines, but not of a float") {
    const wall::Project project = scenes::mounts_to_cut();
    CHECK(test::count_lines(front_of(project, project.pieces[0], 0.3), LineType::dashed) == 2);
    CHECK(test::count_lines(front_of(project, project.pieces[1], 0.3), LineType::dashed) == 4);
    CHECK(test::count_lines(front_of(project, project.pieces[2], 0.3), LineType::dashed) == 1);
}

TEST_CASE("A place on the blank is found again in the drawing, upside down") {
    const wall::Project project = scenes::mounts_to_cut();
    const wall::Piece& kelp = project.pieces.front();
    const MountDesign design = design_for(project, kelp);
    const Rect<Wall> blank =
        in_mount_front(project, kelp, design, Rect<mounts::Front>::at({0, 0}, design.blank));
    CHECK(blank.width() == Approx(design.blank.width));
    CHECK(blank.centre().x == Approx(250));
    CHECK(blank.centre().y == Approx(200));
    const Rect<Wall> window =
        in_mount_front(project, kelp, design, design.layers.front().windows.front().face);
    CHECK(blank.max.y - window.max.y == Approx(design.cut.top));
    CHECK(window.min.x - blank.min.x == Approx(design.cut.left));
}

TEST_CASE("Without measures a mount's front has no words") {
    const wall::Project project = scenes::mounts_to_cut();
    const wall::Piece& kelp = project.pieces.front();
    const WallDrawing drawing =
        mount_front(project, kelp, design_for(project, kelp), {0.3, false, {}});
    CHECK(test::texts_in(drawing).empty());
}

TEST_CASE("No figure on a mount's front lies on another or out of the drawing") {
    for (const units::LengthUnit unit : kUnits)
        for (const double scale : {0.1, 0.2, 0.5, 1.0}) {
            wall::Project project = scenes::mounts_to_cut();
            project.unit = unit;
            for (const wall::Piece& piece : project.pieces) {
                INFO(piece.id.text << " at " << scale << " in " << units::name_of(unit));
                CHECK(test::clashes(front_of(project, piece, scale), scale) ==
                      std::vector<std::string>{});
            }
        }
}

TEST_CASE("Whatever a mount measures, the figures on its front keep off each other") {
    rc::prop("at any scale and in any unit", []() {
        const mounts::test::Case one = mounts::test::some_case();
        wall::Project project = scenes::wall_of(3000, 2400);
        wall::Piece& piece = scenes::add_piece(project, "any", {0, 0}, one.frame.outside);
        const wall::FrameId id = piece.frame;
        project.frames.front() = one.frame;
        project.frames.front().id = id;
        project.prints = one.prints;
        project.unit = *rc::gen::elementOf(std::vector(std::begin(kUnits), std::end(kUnits)));
        const double scale = *rc::gen::element(0.1, 0.2, 0.5, 1.0);
        const WallDrawing drawing = mount_front(project, piece, one.design(), {scale, true, {}});
        RC_ASSERT(test::clashes(drawing, scale) == std::vector<std::string>{});
    });
}

TEST_CASE("What is drawn of a mount's front changes only on purpose") {
    const wall::Project project = scenes::mounts_to_cut();
    std::string text;
    for (const wall::Piece& piece : project.pieces)
        text += fmt::format("{}\n{}\n", piece.id.text, to_text(front_of(project, piece, 0.2)));
    test::check_golden("mount_front.txt", text);
}
