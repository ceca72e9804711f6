#include "spacing/even.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::spacing;
using wall::Placed;

namespace {

Placed piece(const std::string& id, double x, double y, double width, double height,
             bool fixed = false) {
    return {{id}, geometry::Rect<geometry::Wall>::at({x, y}, {width, height}), fixed};
}

/// Rough pieces, some of them fixed, as a person might leave them.
std::vector<Placed> random_wall() {
    std::vector<Placed> pieces;
    const auto number = [](int low, int high) {
        return static_cast<double>(*rc::gen::inRange(low, high));
    };
    const int count = *rc::gen::inRange(1, 9);
    for (int i = 0; i < count; ++i)
        pieces.push_back(piece(std::to_string(i), number(0, 1500), number(0, 1200),
                               number(100, 500), number(100, 500)));
    pieces.front().fixed = *rc::gen::arbitrary<bool>();
    return pieces;
}

EvenOptions quick() {
    EvenOptions options;
    options.effort = 20'000;
    return options;
}

}  // namespace

TEST_CASE("A row comes out even and on one line") {
    const std::vector<Placed> rough = {piece("a", 0, 0, 300, 400), piece("b", 352, 4, 300, 400),
                                       piece("c", 733, -2, 300, 400)};
    const EvenResult even_row = even(rough, {}, {});
    CHECK(even_row.pieces[1].place.left() - even_row.pieces[0].place.right() == Approx(60));
    CHECK(even_row.pieces[2].place.left() - even_row.pieces[1].place.right() == Approx(60));
    CHECK(even_row.pieces[0].place.bottom() == Approx(even_row.pieces[2].place.bottom()));
    CHECK(even_row.uneven.empty());
    CHECK(even_row.least_proved);
}

TEST_CASE("A gap between two that hang stays as it is, and says why") {
    const std::vector<Placed> hung = {piece("kelp", 0, 0, 300, 400, true),
                                      piece("dune", 380, 0, 300, 400, true)};
    const EvenResult result = even(hung, {}, {});
    CHECK(result.pieces == hung);
    REQUIRE(result.uneven.size() == 1);
    CHECK(result.uneven[0].gap.size == 80);
    CHECK_FALSE(result.uneven[0].because.empty());
}

TEST_CASE("A piece that has no room between two fixed ones is named") {
    const std::vector<Placed> pieces = {piece("kelp", 0, 0, 300, 400, true),
                                        piece("dune", 340, 0, 300, 400),
                                        piece("tide", 680, 0, 300, 400, true)};
    const EvenResult result = even(pieces, {}, {});
    CHECK(result.pieces[0] == pieces[0]);
    CHECK(result.pieces[2] == pieces[2]);
    CHECK_FALSE(geometry::overlaps(result.pieces[1].place, result.pieces[0].place));
    CHECK_FALSE(geometry::overlaps(result.pieces[1].place, result.pieces[2].place));
}

TEST_CASE("Two groups far apart stay two groups") {
    const std::vector<Placed> pieces = {piece("a", 0, 0, 300, 400), piece("b", 360, 0, 300, 400),
                                        piece("c", 2000, 0, 300, 400)};
    const EvenResult result = even(pieces, {}, {});
    CHECK(result.pieces == pieces);
}

TEST_CASE("An obstacle is kept clear") {
    const geometry::Rect<geometry::Wall> sofa{{0, 0}, {1900, 800}};
    const EvenResult result =
        even(std::vector{piece("a", 500, 780, 300, 400)}, std::vector{Obstacle{"sofa", sofa}}, {});
    CHECK_FALSE(geometry::overlaps(result.pieces[0].place, sofa));
    CHECK(result.pieces[0].place.bottom() == Approx(800));
}

TEST_CASE(
    "Whatever the wall, what is fixed stays, nothing overlaps unsaid, and the answer is the same "
    "twice") {
    rc::prop("laws of even", [] {
        const auto pieces = random_wall();
        const EvenResult result = even(pieces, {}, quick());
        RC_ASSERT(result.pieces.size() == pieces.size());
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            RC_ASSERT(!pieces[i].fixed || result.pieces[i] == pieces[i]);
            for (std::size_t j = i + 1; j < pieces.size() && result.blocked.empty(); ++j)
                RC_ASSERT(!geometry::overlaps(result.pieces[i].place.grown(-1e-6),
                                              result.pieces[j].place));
        }
        RC_ASSERT(even(pieces, {}, quick()).pieces == result.pieces);
    });
}

TEST_CASE("A wall moved as a whole comes out moved as a whole") {
    rc::prop("translation", [] {
        auto pieces = random_wall();
        const EvenResult here = even(pieces, {}, quick());
        for (Placed& one : pieces)
            one.place = one.place.moved({1024, 512});
        const EvenResult there = even(pieces, {}, quick());
        for (std::size_t i = 0; i < pieces.size(); ++i)
            RC_ASSERT(geometry::distance(there.pieces[i].place.min,
                                         here.pieces[i].place.moved({1024, 512}).min) < 1e-3);
    });
}
