#include "spacing/group.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::spacing;
using wall::Placed;

namespace {

Placed piece(const std::string& id, double x, double y, double width, double height) {
    return {{id}, geometry::Rect<geometry::Wall>::at({x, y}, {width, height}), false};
}

}  // namespace

TEST_CASE("Two pieces side by side face each other over their gap") {
    const std::vector<Placed> pieces = {piece("dune", 360, 50, 200, 200),
                                        piece("kelp", 0, 0, 300, 400)};
    const auto gaps = facing_gaps(pieces, 120);
    REQUIRE(gaps.size() == 1);
    CHECK(gaps[0].first.text == "kelp");
    CHECK(gaps[0].second.text == "dune");
    CHECK(gaps[0].axis == Axis::horizontal);
    CHECK(gaps[0].size == 60);
    CHECK(gaps[0].place == geometry::Rect<geometry::Wall>{{300, 50}, {360, 250}});
}

TEST_CASE("A piece between two others parts them") {
    const std::vector<Placed> pieces = {piece("a", 0, 0, 100, 300), piece("b", 120, 0, 50, 300),
                                        piece("c", 190, 0, 100, 300)};
    CHECK(facing_gaps(pieces, 500).size() == 2);
}

TEST_CASE("Pieces that only pass each other diagonally, or lie too far apart, do not face") {
    CHECK(facing_gaps(std::vector{piece("a", 0, 0, 100, 100), piece("b", 150, 100, 100, 100)}, 500)
              .empty());
    CHECK(facing_gaps(std::vector{piece("a", 0, 0, 100, 100), piece("b", 221, 0, 100, 100)}, 120)
              .empty());
    CHECK(facing_gaps(std::vector{piece("a", 0, 0, 100, 100), piece("b", 220, 0, 100, 100)}, 120)
              .size() == 1);
}

TEST_CASE("A wall may hold several groups, ordered from the left") {
    const std::vector<Placed> pieces = {piece("far", 2000, 0, 100, 100), piece("a", 0, 0, 100, 100),
                                        piece("b", 160, 0, 100, 100), piece("c", 0, 160, 100, 100)};
    const auto groups = find_groups(pieces, group_reach(60));
    REQUIRE(groups.size() == 2);
    CHECK(groups[0].pieces.size() == 3);
    CHECK(groups[0].gap_min() == 60);
    CHECK(groups[0].gap_max() == 60);
    CHECK(groups[0].bounds == geometry::Rect<geometry::Wall>{{0, 0}, {260, 260}});
    CHECK(groups[1].pieces.front().text == "far");
    CHECK(groups[1].gap_max() == 0);
}

TEST_CASE("Pieces that touch or overlap are of one group") {
    CHECK(find_groups(std::vector{piece("a", 0, 0, 100, 100), piece("b", 100, 0, 100, 100)}, 120)
              .size() == 1);
    CHECK(find_groups(std::vector{piece("a", 0, 0, 100, 100), piece("b", 50, 50, 100, 100)}, 120)
              .size() == 1);
}

TEST_CASE("Every piece is in exactly one group") {
    rc::prop("groups part the pieces", [] {
        std::vector<Placed> pieces;
        const int count = *rc::gen::inRange(1, 15);
        const auto number = [](int low, int high) {
            return static_cast<double>(*rc::gen::inRange(low, high));
        };
        for (int i = 0; i < count; ++i)
            pieces.push_back(piece(std::to_string(i), number(0, 3000), number(0, 2000),
                                   number(50, 500), number(50, 500)));
        std::map<std::string, int> times;
        for (const Group& group : find_groups(pieces, 120))
            for (const wall::PieceId& id : group.pieces)
                ++times[id.text];
        RC_ASSERT(times.size() == pieces.size());
        for (const auto& [id, count_of] : times)
            RC_ASSERT(count_of == 1);
    });
}
