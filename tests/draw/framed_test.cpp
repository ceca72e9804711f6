#include "draw/framed.h"

#include "draw/looking.h"
#include "mounts/window.h"
#include "support/mount_scenes.h"
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

/// The first path filled with this colour.
std::optional<Rect<Wall>> box_of(const Shapes& shapes, wall::Colour colour) {
    for (const Path<Wall>& path : test::shapes_in<Path<Wall>>(shapes))
        if (path.fill && path.fill->ink == Ink::own && path.fill->colour == colour)
            return test::bounds_of(path);
    return std::nullopt;
}

std::optional<Rect<Wall>> picture_in(const Shapes& shapes) {
    return box_of(shapes, kPicture);
}

}  // namespace

TEST_CASE("The picture is seen as far as the bevel leaves the mount's window open") {
    const wall::Project project = mounted();
    const auto picture = picture_in(framed(project));
    REQUIRE(picture);
    const wall::Frame& frame = project.frames.front();
    const mounts::MountPlan plan =
        mounts::plan_mount(frame, project.mounts.front(), project.prints.front());
    const double bevel = project.mounts.front().card.thickness;
    CHECK(picture->width() == Approx(plan.window.width - 2 * bevel));
    CHECK(picture->height() == Approx(plan.window.height - 2 * bevel));
    CHECK(picture->left() == Approx(1000 + frame.moulding_width + plan.seen.left + bevel));
    CHECK(picture->bottom() == Approx(1000 + frame.moulding_width + plan.seen.bottom + bevel));
    CHECK(box_of(framed(project), {0xFF, 0xFF, 0xFF})->width() == Approx(plan.window.width));
}

TEST_CASE("A window cut straight has no white core, and its picture fills it") {
    wall::Project project = mounted();
    project.mounts.front().edge = wall::WindowEdge::straight;
    CHECK(picture_in(framed(project))->width() == Approx(240));
    CHECK_FALSE(box_of(framed(project), {0xFF, 0xFF, 0xFF}));
}

TEST_CASE("A layer behind is seen as a ring of its own colour between two bevels") {
    wall::Project project = mounted();
    wall::UnderLayer under;
    under.reveal = 6;
    under.colour = {0x11, 0x22, 0x33};
    project.mounts.front().under = {under};
    const Shapes shapes = framed(project);
    const double bevel = project.mounts.front().card.thickness;
    const auto ring = box_of(shapes, under.colour);
    REQUIRE(ring);
    CHECK(ring->width() == Approx(240 + 2 * 6 - 2 * bevel));  // what the top layer leaves open
    CHECK(picture_in(shapes)->width() == Approx(240 - 2 * bevel));
}

TEST_CASE("A print that floats is seen whole on its card, with a shadow of its own") {
    wall::Project project = mounted();
    project.mounts.front().floats = true;
    const Shapes shapes = framed(project);
    const auto picture = picture_in(shapes);
    REQUIRE(picture);
    CHECK(picture->width() == Approx(250));
    CHECK(picture->height() == Approx(350));
    const auto shadows = test::shapes_in<Shadow<Wall>>(shapes);
    REQUIRE(shadows.size() == 2);
    CHECK(shadows.back().of == *picture);
    CHECK_FALSE(box_of(shapes, {0xFF, 0xFF, 0xFF}));
}

TEST_CASE("Each window of a mount shows its own print") {
    const wall::Project project = scenes::mounts_to_cut();
    const wall::Piece& boats = project.pieces[1];
    Shapes shapes;
    add_framed(shapes, project, boats, *wall::place_of(project, boats), {});
    const auto first = box_of(shapes, project.prints[1].colour);
    const auto last = box_of(shapes, project.prints[3].colour);
    REQUIRE(first);
    REQUIRE(last);
    CHECK(last->min.x - first->min.x == Approx(2 * (120 + 20)));
}

TEST_CASE("A mount whose print is not there yet is blank card") {
    wall::Project project = mounted();
    project.pieces.front().print.reset();
    const Shapes shapes = framed(project);
    CHECK_FALSE(picture_in(shapes));
    CHECK(box_of(shapes, project.mounts.front().colour)->width() == Approx(360));
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
    CHECK(picture->width() == Approx(340 - 2 * 1.4));
    CHECK(picture->height() == Approx(240 - 2 * 1.4));
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
        wall::Mount& mount = project.mounts.front();
        mount.floats = *rc::gen::arbitrary<bool>();
        mount.under.resize(*rc::gen::inRange<std::size_t>(0, 3));
        for (const Shape<Wall>& shape : framed(project))
            for (const Point<Wall> point : test::points_of(shape))
                RC_ASSERT(place.grown(1e-6).contains(point));
    });
}
