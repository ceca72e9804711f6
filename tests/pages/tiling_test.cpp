#include "pages/tiling.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>

using namespace wallwright;
using namespace wallwright::pages;
using geometry::Rect;
using geometry::Size;
using geometry::Wall;

namespace {

constexpr double kOverlap = 10;

Tiling some_tiling() {
    const Rect<Wall> whole =
        Rect<Wall>::at({*rc::gen::inRange(-5000, 5000) / 3.0, *rc::gen::inRange(0, 3000) / 7.0},
                       {*rc::gen::inRange(20, 3000) / 1.1, *rc::gen::inRange(20, 3000) / 1.3});
    const Size room{*rc::gen::inRange(100, 400) / 1.7, *rc::gen::inRange(100, 400) / 1.9};
    const Tiling tiling = tiling_of(whole, room, kOverlap);
    RC_ASSERT(tiling.tile().width <= room.width + 1e-6);
    RC_ASSERT(tiling.tile().height <= room.height + 1e-6);
    const auto too_few = [](double length, double most, int count) {
        return count == 1 || count - 1 < (length - kOverlap) / (most - kOverlap) + 1e-6;
    };
    RC_ASSERT(too_few(whole.width(), room.width, tiling.columns));
    RC_ASSERT(too_few(whole.height(), room.height, tiling.rows));
    return tiling;
}

std::vector<Rect<Wall>> outline_of(const Rect<Wall>& frame) {
    return {{frame.min, {frame.max.x, frame.min.y}},
            {frame.min, {frame.min.x, frame.max.y}},
            {{frame.max.x, frame.min.y}, frame.max},
            {{frame.min.x, frame.max.y}, frame.max}};
}

bool holds(const std::vector<TileIndex>& tiles, TileIndex index) {
    return std::ranges::find(tiles, index) != tiles.end();
}

/// How many can be reached from the first over shared sides.
std::size_t reached(const std::vector<TileIndex>& tiles) {
    std::vector<TileIndex> found{tiles.front()};
    for (std::size_t i = 0; i < found.size(); ++i)
        for (const TileIndex& tile : tiles)
            if (std::abs(tile.row - found[i].row) + std::abs(tile.column - found[i].column) == 1 &&
                !holds(found, tile))
                found.push_back(tile);
    return found.size();
}

}  // namespace

TEST_CASE("Tiles cover the whole, and neighbours overlap by what was asked") {
    rc::prop("on any sheet", [] {
        const Tiling tiling = some_tiling();
        const Rect<Wall> first = tiling.shown({0, 0});
        const Rect<Wall> last = tiling.shown({tiling.rows - 1, tiling.columns - 1});
        RC_ASSERT(std::abs(first.left() - tiling.whole.left()) < 1e-6);
        RC_ASSERT(std::abs(first.top() - tiling.whole.top()) < 1e-6);
        RC_ASSERT(std::abs(last.right() - tiling.whole.right()) < 1e-6);
        RC_ASSERT(std::abs(last.bottom() - tiling.whole.bottom()) < 1e-6);
        for (int column = 1; column < tiling.columns; ++column)
            RC_ASSERT(std::abs(overlap_x(tiling.shown({0, column - 1}), tiling.shown({0, column})) -
                               kOverlap) < 1e-6);
        for (int row = 1; row < tiling.rows; ++row)
            RC_ASSERT(std::abs(overlap_y(tiling.shown({row - 1, 0}), tiling.shown({row, 0})) -
                               kOverlap) < 1e-6);
    });
}

TEST_CASE("What must be seen is printed, hangs together, and no page is blank for nothing") {
    rc::prop("an outline and a point in it", [] {
        const Tiling tiling = some_tiling();
        const Rect<Wall> frame = tiling.whole.grown(-5);
        std::vector<Rect<Wall>> seen = outline_of(frame);
        const geometry::Point<Wall> point{
            frame.left() + frame.width() * *rc::gen::inRange(0, 100) / 100.0,
            frame.bottom() + frame.height() * *rc::gen::inRange(0, 100) / 100.0};
        seen.push_back({point, point});
        const auto tiles = tiles_to_print(tiling, seen);
        for (const Rect<Wall>& one : seen)
            for (int row = 0; row < tiling.rows; ++row)
                for (int column = 0; column < tiling.columns; ++column) {
                    const Rect<Wall> shown = tiling.shown({row, column}).grown(-1e-3);
                    if (touch(shown, one))
                        RC_ASSERT(holds(tiles, {row, column}));
                }
        RC_ASSERT(reached(tiles) == tiles.size());
        for (const TileIndex& tile : tiles)
            RC_ASSERT(std::ranges::any_of(seen, [&](const Rect<Wall>& one) {
                const Rect<Wall> below{{tiling.shown(tile).left(), frame.bottom()},
                                       {tiling.shown(tile).right(), tiling.shown(tile).top()}};
                return touch(below, one);
            }));
    });
}

TEST_CASE("The middle of a large frame is not printed but where a point lies in it") {
    const Rect<Wall> frame{{0, 0}, {1000, 1000}};
    const Tiling tiling = tiling_of(frame, {208, 208}, kOverlap);
    REQUIRE(tiling.rows == 5);
    REQUIRE(tiling.columns == 5);
    std::vector<Rect<Wall>> seen = outline_of(frame);
    CHECK(tiles_to_print(tiling, seen).size() == 16);
    seen.push_back({{500, 500}, {500, 500}});
    const auto tiles = tiles_to_print(tiling, seen);
    CHECK(tiles.size() == 18);
    CHECK(holds(tiles, {2, 2}));
    CHECK(holds(tiles, {1, 2}));
}

TEST_CASE("Tiles are named by a letter a row and a number a column") {
    CHECK(name_of({0, 0}) == "A1");
    CHECK(name_of({1, 11}) == "B12");
    CHECK(name_of({26, 0}) == "AA1");
}
