#include "wall/titles.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::wall;
using units::LengthUnit;

TEST_CASE("A target is called by the thing's title, or by where it is") {
    Project project = scenes::wall_of(5000, 2600);
    scenes::add_furniture(project, FurnitureType::sofa, Rect<Wall>::at({500, 0}, {1900, 800}));
    scenes::add_fixture(project, FixtureType::door, Rect<Wall>::at({4000, 0}, {800, 2000})).title =
        "Kitchen door";
    const auto title = [&](const Target& target, LengthUnit unit = LengthUnit::mm) {
        return title_of(project, target, unit);
    };
    CHECK(title(project.room.furniture.front().id) == "the sofa");
    CHECK(title(project.room.fixtures.front().id) == "Kitchen door");
    CHECK(title(FurnitureId{"boat"}) == "boat");
    CHECK(title(WallCorner::top_left) == "the top left corner");
    CHECK(title(Point<Wall>{3800, 1500}) == "the point 3800 mm across and 1500 mm up");
    CHECK(title(Point<Wall>{3800, 1500}, LengthUnit::cm) ==
          "the point 380 cm across and 150 cm up");
    CHECK(title(Rect<Wall>::at({3000, 1200}, {800, 700})) ==
          "the part of the wall from 3000 to 3800 mm across and 1200 to 1900 mm up");
}

TEST_CASE("A print is called by its title, or else by its id") {
    Project project = scenes::wall_of(3000, 2400);
    project.prints.resize(2);
    project.prints[0].id.text = "kelp";
    project.prints[0].title = "Kelp, lino";
    project.prints[1].id.text = "gull";
    CHECK(title_of(project, PrintId{"kelp"}) == "Kelp, lino");
    CHECK(title_of(project, PrintId{"gull"}) == "gull");
    CHECK(title_of(project, PrintId{"shell"}) == "shell");
}

TEST_CASE("A sheet of card is called by its title, or else by its id") {
    CardSheet sheet;
    sheet.id = {"jumbo"};
    CHECK(title_of(sheet) == "jumbo");
    sheet.title = "Jumbo, cream";
    CHECK(title_of(sheet) == "Jumbo, cream");
}

TEST_CASE("A list has an and before its last, and counts the end when it is long") {
    const std::vector<std::string> titles{"Kelp", "Dune", "Tide", "Reef"};
    const std::span<const std::string> all(titles);
    CHECK(listed(all.first(0)).empty());
    CHECK(listed(all.first(1)) == "Kelp");
    CHECK(listed(all.first(2)) == "Kelp and Dune");
    CHECK(listed(all) == "Kelp, Dune, Tide and Reef");
    CHECK(listed(all, 4) == "Kelp, Dune, Tide and Reef");
    CHECK(listed(all, 3) == "Kelp, Dune and 2 more");
    CHECK(listed(all, 2) == "Kelp and 3 more");
}

TEST_CASE("Pieces are listed by their titles") {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "kelp", {0, 1000}, {300, 400});
    scenes::add_waiting(project, "dune", {300, 400}).title.clear();
    const std::vector<PieceId> pieces{{"dune"}, {"kelp"}, {"reef"}};
    CHECK(titles_of(project, pieces) == "dune, Kelp and reef");
    CHECK(titles_of(project, pieces, 2) == "dune and 2 more");
}

TEST_CASE("In lists of what to hang a frame that is wished for says that it is not bought yet") {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "kelp", {0, 1000}, {300, 400});
    CHECK(title_to_hang(project, {"kelp"}) == "Kelp");
    project.pieces[0].wished = true;
    CHECK(title_to_hang(project, {"kelp"}) == "Kelp (not bought yet)");
    CHECK(title_to_hang(project, {"reef"}) == "reef");
}
