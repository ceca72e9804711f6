#include "desk/bench/mount_places.h"

#include "mounted.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;
using mounts::Borders;
using wall::FromCorner;

namespace {

mounts::MountDesign two_windows() {
    return MountHand{Session(wall_with_two_windows())}.design();
}

}  // namespace

TEST_CASE("Windows by hand begin where they lie, and one that is off the blank at its edge") {
    const auto corners = corners_of(two_windows());
    CHECK(corners == std::vector<FromCorner>{{60, 150}, {200, 150}});
    wall::Project project = wall_with_mount();
    project.prints.front().size = {500, 297};
    CHECK(corners_of(MountHand{Session(project)}.design()).front().left == 0);
}

TEST_CASE("A wider border takes every window away from its side") {
    const mounts::MountDesign design = two_windows();
    const auto first = [&](double Borders::*border) {
        return corners_for_border(design, border, 7).front();
    };
    CHECK(first(&Borders::left) == FromCorner{67, 150});
    CHECK(first(&Borders::right) == FromCorner{53, 150});
    CHECK(first(&Borders::top) == FromCorner{60, 157});
    CHECK(first(&Borders::bottom) == FromCorner{60, 143});
    CHECK(corners_for_border(design, &Borders::left, 7).back() == FromCorner{207, 150});
}

TEST_CASE("A window more begins a bar beside the others, and ends on the blank") {
    const mounts::MountDesign design = two_windows();
    CHECK(corner_beside(design, 10, 40) == FromCorner{320, 150});
    CHECK(corner_beside(design, 30, 100) == FromCorner{270, 150});
    CHECK(corner_beside(design, 30, 1000).left == 0);
}
