#include "arrange/even_wall.h"

#include "edits/edit.h"
#include "spacing/group.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

/// A row of three 300 x 400 pieces, roughly placed.
Project rough_row(std::initializer_list<double> lefts) {
    Project project = edits::start({3600, 2400}, units::LengthUnit::mm).value();
    for (const double left : lefts) {
        Frame frame;
        frame.outside = {300, 400};
        Piece piece;
        piece.title = "piece";
        piece.state = PieceState::planned;
        piece.at = Point<Wall>{left, 1300};
        project = edits::add_piece(std::move(project), frame, piece).value();
    }
    return project;
}

std::vector<spacing::Gap> gaps_of(const Project& project) {
    return spacing::facing_gaps(placed_pieces(project), spacing::group_reach(project.style.gap));
}

}  // namespace

TEST_CASE("A rough row comes out with the wanted gap, moved as little as it can be") {
    const auto evened = arrange::even_wall(rough_row({1000, 1352, 1733})).value();
    const auto gaps = gaps_of(evened.project);
    REQUIRE(gaps.size() == 2);
    for (const spacing::Gap& gap : gaps)
        CHECK(gap.size == Approx(60).margin(0.011));
    CHECK(evened.moved.size() >= 2);
    // Least squares by hand: with lefts a, a + 360, a + 720, the best a is the mean of 1000, 1352 -
    // 360, 1733 - 720.
    CHECK(evened.project.pieces[0].at->x == Approx((1000 + 992 + 1013) / 3.0).margin(0.01));
}

TEST_CASE("An even wall stays as it is") {
    const auto once = arrange::even_wall(rough_row({1000, 1352, 1733})).value();
    const auto twice = arrange::even_wall(once.project).value();
    CHECK(twice.moved.empty());
    CHECK(twice.project == once.project);
}

TEST_CASE("What hangs does not move, and the others come to it") {
    Project project = rough_row({1000, 1340});
    project.pieces[0].state = PieceState::hung;
    const auto evened = arrange::even_wall(project).value();
    CHECK(evened.project.pieces[0] == project.pieces[0]);
    CHECK(evened.project.pieces[1].at->x == Approx(1360).margin(0.01));
}

TEST_CASE("The wanted gap of the project is the one that comes out") {
    const auto project = edits::set_gap(rough_row({1000, 1352, 1733}), 45).value();
    for (const spacing::Gap& gap : gaps_of(arrange::even_wall(project).value().project))
        CHECK(gap.size == Approx(45).margin(0.011));
}

TEST_CASE("Pieces end inside the wall and clear of the furniture") {
    Project project = rough_row({20, 250, 3400});
    Furniture sofa;
    sofa.type = FurnitureType::sofa;
    sofa.place = Rect<Wall>::at({700, 0}, {1900, 1320});
    project = edits::add_furniture(std::move(project), sofa).value();
    const auto evened = arrange::even_wall(project).value();
    for (const Placed& piece : placed_pieces(evened.project)) {
        CHECK(geometry::contains(project.room.outline, piece.place));
        CHECK_FALSE(geometry::overlaps(piece.place, sofa.place));
    }
}
