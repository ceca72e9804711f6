#include "rules/scene.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::rules;
using namespace wallwright::scenes;

namespace {

wall::Project two_on_the_wall_and_one_waiting() {
    wall::Project project = wall_of(3600, 2400);
    add_piece(project, "kelp", {1000, 1300}, {300, 400});
    add_waiting(project, "dune", {300, 400});
    add_hung(project, "tide", {1360, 1300}, {300, 400});
    return project;
}

}  // namespace

TEST_CASE("The rules see the pieces on the wall, each beside its frame and how it hangs") {
    const wall::Project project = two_on_the_wall_and_one_waiting();
    const auto hangings = hanging::hang_all(project, small_catalogue());
    const std::vector<OnWall> pieces = pieces_on_wall(project, hangings);
    REQUIRE(pieces.size() == 2);
    CHECK(pieces[0].piece->id == wall::PieceId{"kelp"});
    CHECK(pieces[1].piece->id == wall::PieceId{"tide"});
    CHECK(pieces[1].frame->id == wall::FrameId{"tide"});
    CHECK(pieces[1].hanging->piece == wall::PieceId{"tide"});
    CHECK(pieces[1].place == geometry::Rect<geometry::Wall>{{1360, 1300}, {1660, 1700}});
}

TEST_CASE("A group's members come in the project's order") {
    const wall::Project project = two_on_the_wall_and_one_waiting();
    const wall::Catalogue catalogue = small_catalogue();
    const auto hangings = hanging::hang_all(project, catalogue);
    const auto groups = spacing::find_groups(placed_pieces(project), 120);
    const Scene scene{project, catalogue, groups, {}, {}, pieces_on_wall(project, hangings)};
    REQUIRE(groups.size() == 1);
    const std::vector<const OnWall*> members = members_of(scene, groups.front());
    REQUIRE(members.size() == 2);
    CHECK(members[0] == &on_wall(scene, {"kelp"}));
    CHECK(members[1] == &on_wall(scene, {"tide"}));
}

TEST_CASE("A piece is over a thing when it shares some width and rises above it") {
    const geometry::Rect<geometry::Wall> thing{{1000, 0}, {2000, 800}};
    const auto over = [&thing](double left, double bottom) {
        return is_over({nullptr, nullptr, nullptr, {{left, bottom}, {left + 300, bottom + 400}}},
                       thing);
    };
    CHECK(over(1200, 1500));
    CHECK(over(1200, 600));        // partly behind it
    CHECK_FALSE(over(1200, 400));  // wholly behind it
    CHECK_FALSE(over(2000, 1500));
    CHECK_FALSE(over(700, 1500));
}

TEST_CASE("A piece that could not be hung counts by its hanger") {
    wall::Piece piece;
    hanging::Hanging hanging;
    const OnWall one{&piece, nullptr, &hanging, {}};
    CHECK(on_strips(one));
    piece.hanger.type = wall::HangerType::sawtooth;
    CHECK_FALSE(on_strips(one));
}
