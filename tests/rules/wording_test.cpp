#include "rules/wording.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;

namespace {

/// The words of a wall without anything on it, in a unit.
struct Words {
    wall::Project project = wall_of(3600, 2400);
    wall::Catalogue catalogue;
    Scene scene{project, catalogue, {}, {}, {}, {}};

    explicit Words(units::LengthUnit unit) { project.unit = unit; }
};

}  // namespace

TEST_CASE("A piece without a title is called by its id") {
    wall::Project project = wall_of(3600, 2400);
    wall::Piece& piece = add_piece(project, "kelp", {0, 0}, {300, 400});
    CHECK(title_of(OnWall{&piece, nullptr, nullptr, {}}) == "Kelp");
    piece.title.clear();
    CHECK(title_of(OnWall{&piece, nullptr, nullptr, {}}) == "kelp");
}

TEST_CASE("Things without a title are called by what they are") {
    wall::Furniture sofa;
    sofa.type = wall::FurnitureType::sofa;
    CHECK(title_of(sofa) == "the sofa");
    CHECK(title_of(wall::Furniture{}) == "the furniture");
    wall::Fixture light_switch;
    light_switch.type = wall::FixtureType::light_switch;
    CHECK(title_of(light_switch) == "the switch");
    CHECK(title_of(wall::Fixture{}) == "the fixture");
    sofa.title = "Red bench";
    CHECK(title_of(sofa) == "Red bench");
}

TEST_CASE("A list names up to four pieces and counts the rest") {
    wall::Project project = wall_of(3600, 2400);
    for (const char* id : {"kelp", "dune", "tide", "reef", "foam", "gull"})
        add_piece(project, id, {0, 0}, {300, 400});
    std::vector<OnWall> pieces;
    for (const wall::Piece& piece : project.pieces)
        pieces.push_back({&piece, nullptr, nullptr, {}});
    const auto list_of = [&pieces](std::size_t count) {
        std::vector<const OnWall*> some;
        for (std::size_t i = 0; i < count; ++i)
            some.push_back(&pieces[i]);
        return titles_of(some);
    };
    CHECK(list_of(1) == "Kelp");
    CHECK(list_of(2) == "Kelp and Dune");
    CHECK(list_of(3) == "Kelp, Dune and Tide");
    CHECK(list_of(4) == "Kelp, Dune, Tide and Reef");
    CHECK(list_of(5) == "Kelp, Dune, Tide and 2 more");
    CHECK(list_of(6) == "Kelp, Dune, Tide and 3 more");
}

TEST_CASE("No length that is something is shown as nothing") {
    CHECK(length_text(Words(units::LengthUnit::mm).scene, 0.1) == "0.1 mm");
    CHECK(length_text(Words(units::LengthUnit::mm).scene, 0) == "0 mm");
    CHECK(length_text(Words(units::LengthUnit::inch).scene, 0.1) == "less than 1/16 in");
    CHECK(length_text(Words(units::LengthUnit::inch).scene, 0) == "0 in");
}

TEST_CASE("A bound is passed from above or from below, or just so") {
    const Words mm(units::LengthUnit::mm);
    CHECK(passed_text(mm.scene, 90, 75) == "over the 75 mm");
    CHECK(passed_text(mm.scene, 30, 40) == "under the 40 mm");
    const Words inches(units::LengthUnit::inch);
    CHECK(passed_text(inches.scene, 75.2, 75) == "just over the 2 15/16 in");
    CHECK(passed_text(inches.scene, 74.8, 75) == "just under the 2 15/16 in");
}

TEST_CASE("A range names its unit once") {
    CHECK(range_text(Words(units::LengthUnit::mm).scene, 1450, 1550) == "1450 to 1550 mm");
    CHECK(range_text(Words(units::LengthUnit::cm).scene, 1450, 1550) == "145 to 155 cm");
}
