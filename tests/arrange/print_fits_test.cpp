#include "arrange/print_fits.h"

#include "arrange/standard_frames.h"
#include "mounts/window.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::arrange;

namespace {

wall::Project with_prints(std::initializer_list<wall::Size> sizes) {
    wall::Project project = scenes::wall_of(3000, 2500);
    for (const wall::Size& size : sizes) {
        wall::Print print;
        print.id = {"print" + std::to_string(project.prints.size() + 1)};
        print.size = size;
        project.prints.push_back(print);
    }
    return project;
}

/// The usual frame for a sheet of this size.
wall::Frame frame_for(wall::Size sheet) {
    wall::Project project;
    project.own.sizes = {{"sheet", sheet, "", {}}};
    return standard_frames(project, {}).front().frame;
}

}  // namespace

TEST_CASE("A frame for a size takes a sheet of that size") {
    const wall::Frame frame = frame_for({297, 420});
    CHECK(mounts::blank_size(frame) == geometry::Size{297, 420});
    // By hand: 297 + 2 x (20 - 6) + 2.
    CHECK(frame.outside == geometry::Size{327, 450});
}

TEST_CASE("A small frame has a narrow moulding and still takes its sheet") {
    const wall::Frame frame = frame_for({60, 90});
    CHECK(mounts::blank_size(frame).width == Approx(60));
    CHECK(frame.moulding_width < 20);
}

TEST_CASE("A print of the frame's size fills it without a mount") {
    const auto fits = fitting_prints(with_prints({{297, 420}}), frame_for({297, 420}), 3);
    REQUIRE(fits.size() == 1);
    CHECK_FALSE(fits.front().with_mount);
    CHECK(fits.front().border == 0);
}

TEST_CASE("A smaller print gets a mount, with the narrowest border that is seen") {
    const auto fits = fitting_prints(with_prints({{200, 270}}), frame_for({297, 420}), 3);
    REQUIRE(fits.size() == 1);
    CHECK(fits.front().with_mount);
    // By hand: a window of 190 mm in 297 leaves 53.5 a side; the lip hides 6 less half the
    // clearance of 2.
    CHECK(fits.front().border == Approx(53.5 - 5));
}

TEST_CASE("Prints that leave too little border, or lie across, or are too large do not fit") {
    const wall::Project project = with_prints({{270, 380}, {350, 250}, {400, 500}});
    CHECK(fitting_prints(project, frame_for({297, 420}), 3).empty());
}

TEST_CASE("The print that fills comes first, then the one with even borders") {
    const wall::Project project = with_prints({{120, 300}, {190, 310}, {297, 420}});
    const auto fits = fitting_prints(project, frame_for({297, 420}), 3);
    REQUIRE(fits.size() == 3);
    CHECK(fits[0].print.text == "print3");
    CHECK(fits[1].print.text == "print2");
    CHECK(fits[2].print.text == "print1");
    CHECK(fitting_prints(project, frame_for({297, 420}), 1).size() == 1);
}

TEST_CASE("A print that hangs or is planned is not at hand, one that waits is") {
    wall::Project project = with_prints({{200, 270}});
    wall::Piece& piece = scenes::add_hung(project, "kelp", {500, 1200}, {300, 400});
    piece.print = wall::PrintId{"print1"};
    CHECK(fitting_prints(project, frame_for({297, 420}), 3).empty());
    piece.state = wall::PieceState::waiting;
    piece.at.reset();
    CHECK(fitting_prints(project, frame_for({297, 420}), 3).size() == 1);
}

TEST_CASE("Of two sizes that are nearly the same the one in the person's units stays") {
    wall::Catalogue catalogue;
    catalogue.sizes = {{"8x10in", {203.2, 254}, "", {}},
                       {"20x25cm", {200, 250}, "", {}},
                       {"30x40cm", {300, 400}, "", {}}};
    wall::Project project = scenes::wall_of(3000, 2500);
    auto frames = standard_frames(project, catalogue);
    REQUIRE(frames.size() == 2);
    CHECK(frames[0].size_name == "20x25cm");
    CHECK(frames[0].at_home);
    project.unit = units::LengthUnit::inch;
    frames = standard_frames(project, catalogue);
    REQUIRE(frames.size() == 2);
    CHECK(frames[0].size_name == "8x10in");
    CHECK(frames[1].size_name == "30x40cm");
    CHECK_FALSE(frames[1].at_home);
}

TEST_CASE("The person's own sizes come first and stand up") {
    wall::Catalogue catalogue;
    catalogue.sizes = {{"30x40cm", {300, 400}, "", {}}};
    wall::Project project = scenes::wall_of(3000, 2500);
    project.own.sizes = {{"the joiner's", {402, 301}, "", {}}};
    const auto frames = standard_frames(project, catalogue);
    REQUIRE(frames.size() == 1);
    CHECK(frames[0].size_name == "the joiner's");
    CHECK(frames[0].frame.outside == geometry::Size{331, 432});
}
