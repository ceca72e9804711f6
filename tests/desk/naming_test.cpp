#include "desk/naming.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;

TEST_CASE("The pieces of a wall are counted by their state") {
    wall::Project project = scenes::wall_of(3000, 2400);
    CHECK(desk::counts_of(project) == "0 hung, 0 planned, 0 waiting");
    scenes::add_hung(project, "kelp", {100, 1300}, {300, 400});
    scenes::add_piece(project, "dune", {500, 1300}, {300, 400});
    scenes::add_piece(project, "fern", {900, 1300}, {300, 400});
    CHECK(desk::counts_of(project) == "1 hung, 2 planned, 0 waiting");
}
