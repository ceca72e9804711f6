#include "draw/framed.h"

#include "draw/looking.h"
#include "mounts/window.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Rect;
using geometry::Wall;

namespace {

const wall::Colour kPicture{0x12, 0x34, 0x56};

/// A piece of 400 by 500 with a mount and a print of 250 by 350, both with their own colours.
wall::Project mounted() {
    wall::Project project = scenes::wall_of(3000, 2400);
    wall::Piece& piece = scenes::add_piece(project, "kelp", {1000, 1000}, {400, 500});
    project.mounts.emplace_back().id = {"cream"};
    wall::Print& print = project.prints.emplace_back();
    print.id = {"print"};
    print.size = {250, 350};
    print.colour = kPicture;
    piece.mount = wall::MountId{"cream"};
    piece.print = wall::PrintId{"print"};
    return project;
}

Shapes framed(const wall::Project& project, const Pictures& pictures = {}) {
    Shapes shapes;
    const wall::Piece& piece = project.pieces.front();
    add_framed(shapes, project, piece, *wall::place_of(project, piece), pictures);
    return shapes;
}

/// The path filled with the print's colour.
std::optional<Rect<Wall>> picture_in(const Shapes& shapes) {
    for (const Path<Wall>& path : test::shapes_in<Path<Wall>>(shapes))
        if (path.fill && path.fill->ink == Ink::own && path.fill->colour == kPicture)
            return test::bounds_of(path);
    return std::nullopt;
}

}  // namespace

TEST_CASE("The picture is seen where the mount's window is cut") {
    const wall::Project project = mounted();
    const auto picture = picture_in(framed(project));
    REQUIRE(picture);
    const wall::Frame& frame = project.frames.front();
    const mounts::MountPlan plan =
        mounts::plan_mount(frame, project.mounts.front(), project.prints.front());
    CHECK(picture->width() == Approx(plan.window.width));
    CHECK(picture->height() == Approx(plan.window.height));
    CHECK(picture->left() == Approx(1000 + frame.moulding_width + plan.seen.left));
    CHECK(picture->bottom() == Approx(1000 + frame.moulding_width + plan.seen.bottom));
}

TEST_CASE("A wider lower border lifts the picture") {
    wall::Project project = mounted();
    const double level = picture_in(framed(project))->bottom();
    project.mounts.front().base_extra = 12;
    CHECK(picture_in(framed(project))->bottom() == Approx(level + 6));
}

TEST_CASE("A turned frame shows an upright print upright") {
    wall::Project project = mounted();
    project.pieces.front().turned = true;
    project.prints.front().size = {350, 250};
    const auto picture = picture_in(framed(project));
    REQUIRE(picture);
    CHECK(picture->width() == Approx(340));
    CHECK(picture->height() == Approx(240));
}

TEST_CASE("A print without a mount fills what the moulding leaves, or lies in its middle") {
    wall::Project project = mounted();
    project.pieces.front().mount.reset();
    project.prints.front().size = {1000, 1000};
    CHECK(picture_in(framed(project))->width() == Approx(360));
    project.prints.front().size = {100, 200};
    const auto small = picture_in(framed(project));
    CHECK(small->width() == Approx(100));
    CHECK(small->centre().x == Approx(1200));
}

TEST_CASE("A print's own picture is shown from its folder, unless flat colour is asked for") {
    wall::Project project = mounted();
    project.prints.front().picture = "kelp.png";
    const auto images = test::shapes_in<Image<Wall>>(framed(project, {true, "pictures"}));
    REQUIRE(images.size() == 1);
    CHECK(images.front().file == "pictures/kelp.png");
    CHECK(images.front().instead == Paint{Ink::own, kPicture});
    const Shapes flat = framed(project, {false, "pictures"});
    CHECK(test::shapes_in<Image<Wall>>(flat).empty());
    CHECK(picture_in(flat));
}

TEST_CASE("A frame casts a shadow as deep as it stands off the wall") {
    wall::Project project = mounted();
    project.frames.front().depth = 33;
    const auto shadows = test::shapes_in<Shadow<Wall>>(framed(project));
    REQUIRE(shadows.size() == 1);
    CHECK(shadows.front().depth == 33);
}

TEST_CASE("The upper moulding is lighter than the lower one") {
    const auto paths = test::shapes_in<Path<Wall>>(framed(mounted()));
    const auto red_of_face = [&paths](double y) {
        for (const Path<Wall>& path : paths)
            if (path.fill && path.steps.size() == 3 && test::bounds_of(path).width() > 399 &&
                std::abs(test::bounds_of(path).centre().y - y) < 1)
                return static_cast<int>(path.fill->colour.red);
        return -1;
    };
    REQUIRE(red_of_face(1010) >= 0);
    CHECK(red_of_face(1490) > red_of_face(1010));
}

TEST_CASE("Whatever a frame, a mount and a print measure, the piece stays inside its frame") {
    rc::prop("and its shadow under it", []() {
        wall::Project project = mounted();
        wall::Frame& frame = project.frames.front();
        frame.outside = {static_cast<double>(*rc::gen::inRange(10, 1500)),
                         static_cast<double>(*rc::gen::inRange(10, 1500))};
        frame.moulding_width = *rc::gen::inRange(0, 300);
        project.prints.front().size = {static_cast<double>(*rc::gen::inRange(1, 2000)),
                                       static_cast<double>(*rc::gen::inRange(1, 2000))};
        const Rect<Wall> place = *wall::place_of(project, project.pieces.front());
        for (const Shape<Wall>& shape : framed(project))
            for (const Point<Wall> point : test::points_of(shape))
                RC_ASSERT(place.grown(1e-6).contains(point));
    });
}
