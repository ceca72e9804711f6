#include "edits/usual_place.h"

#include "edits/room.h"
#include "support/gallery.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::wall;

TEST_CASE("Furniture first stands in the middle on the floor, a fixture at its usual height") {
    const Project bare = scenes::wall_of(3600, 2400);
    CHECK(edits::usual_place(bare, FurnitureType::sofa) ==
          Rect<Wall>::at({850, 0}, edits::usual_size(FurnitureType::sofa)));
    CHECK(edits::usual_place(bare, FixtureType::socket) ==
          Rect<Wall>::at({1757, 300}, edits::usual_size(FixtureType::socket)));
}

TEST_CASE("What stands in the middle already is kept clear by the least that does") {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_furniture(project, FurnitureType::plant, Rect<Wall>::at({1550, 0}, {500, 900}));
    CHECK(edits::usual_place(project, FurnitureType::plant).left() == 2050);
    scenes::add_piece(project, "kelp", {2100, 800}, {400, 500});
    CHECK(edits::usual_place(project, FurnitureType::plant).left() == 1050);
}

TEST_CASE("Where there is no free place a thing stands in the middle") {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_furniture(project, FurnitureType::other, Rect<Wall>::at({0, 0}, {3600, 1000}));
    CHECK(edits::usual_place(project, FurnitureType::sofa).centre().x == 1800);
}

TEST_CASE("The floor of a stair is followed") {
    Project project = scenes::wall_of(2000, 3000);
    project.room.outline = {{{0, 0}, {500, 0}, {500, 400}, {2000, 400}, {2000, 3000}, {0, 3000}}};
    CHECK(edits::usual_place(project, FurnitureType::lamp).bottom() == 400);
    CHECK(edits::usual_place(project, FixtureType::socket).bottom() == 700);
}

TEST_CASE("A piece first goes to the middle, its centre on the centre line") {
    Project project = scenes::wall_of(3600, 2400);
    project.style.centre_height = 1500;
    CHECK(edits::usual_place(project, Size{400, 500}) == Point<Wall>{1600, 1250});
}

TEST_CASE("On a stair a piece first goes as far above the line of its nosings") {
    const Project project = scenes::stair_gallery();
    const double floor = 180 * (2000.0 - 400) / 280 + 180;
    CHECK(edits::usual_place(project, Size{400, 500}).y ==
          Approx(floor + project.style.centre_height - 250));
}
