#include "rules/above_furniture.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;

namespace {

/// A sofa with a wide group above it, a second group above that, and a low table at the sofa's
/// right end.
wall::Project sofa_table_and_two_groups() {
    wall::Project project = wall_of(4600, 3000);
    add_furniture(project, wall::FurnitureType::sofa, {{700, 0}, {2600, 800}});
    add_furniture(project, wall::FurnitureType::table, {{2600, 0}, {3100, 450}});
    add_piece(project, "kelp", {1000, 1010}, {900, 400});
    add_piece(project, "dune", {1960, 1000}, {1000, 400});
    add_piece(project, "tide", {1000, 1700}, {900, 400});
    return project;
}

/// What hangs above what on a wall, and everything it points to.
struct Looked {
    wall::Project project;
    wall::Catalogue catalogue = small_catalogue();
    std::vector<hanging::Hanging> hangings = hanging::hang_all(project, catalogue);
    std::vector<spacing::Group> groups = spacing::find_groups(placed_pieces(project), 120);
    Scene scene{project, catalogue, groups, {}, {}, pieces_on_wall(project, hangings)};
    std::vector<Above> above = groups_above_furniture(scene);

    explicit Looked(wall::Project seen) : project(std::move(seen)) {}
};

}  // namespace

TEST_CASE("Each piece of furniture has the lowest group above it") {
    const Looked looked(sofa_table_and_two_groups());
    REQUIRE(looked.above.size() == 2);
    const Above& sofa = looked.above[0];
    CHECK(sofa.furniture->id == wall::FurnitureId{"sofa"});
    CHECK(sofa.group->pieces == std::vector<wall::PieceId>{{"kelp"}, {"dune"}});
    CHECK(sofa.lowest->piece->id == wall::PieceId{"dune"});
    CHECK(sofa.clearance == 200);
    CHECK(sofa.main);
    const Above& table = looked.above[1];
    CHECK(table.furniture->id == wall::FurnitureId{"table"});
    CHECK(table.clearance == 550);
    CHECK_FALSE(table.main);
}

TEST_CASE("A group that is partly behind the furniture does not hang above it") {
    wall::Project project = sofa_table_and_two_groups();
    project.pieces.front().at = geometry::Point<geometry::Wall>{1000, 700};
    project.room.furniture.pop_back();
    const Looked looked(project);
    REQUIRE(looked.above.size() == 1);
    CHECK(looked.above[0].group->pieces == std::vector<wall::PieceId>{{"tide"}});
}

TEST_CASE("Nothing hangs above lamps and plants") {
    wall::Project project = sofa_table_and_two_groups();
    project.room.furniture[0].type = wall::FurnitureType::lamp;
    project.room.furniture[1].type = wall::FurnitureType::plant;
    CHECK(Looked(project).above.empty());
}
