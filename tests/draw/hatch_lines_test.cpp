#include "draw/hatch_lines.h"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <cmath>

using namespace wallwright;
using draw::Area;
using draw::hatch_lines;

namespace {

using Rect = geometry::Rect<geometry::Wall>;

constexpr Rect kEverywhere{{-1e5, -1e5}, {1e5, 1e5}};

Area box(double left, double bottom, double right, double top) {
    return {{left, bottom}, {right, bottom}, {right, top}, {left, top}};
}

double total_length(const std::vector<geometry::Segment<geometry::Wall>>& lines) {
    double sum = 0;
    for (const auto& line : lines)
        sum += geometry::distance(line.from, line.to);
    return sum;
}

bool is_in_any(const std::vector<Area>& areas, geometry::Point<geometry::Wall> point) {
    for (const Area& area : areas)
        if (geometry::contains(geometry::Polygon{area}, point))
            return true;
    return false;
}

}  // namespace

TEST_CASE("A hatch's lines rise to the right at 45 degrees, a spacing apart") {
    const auto lines = hatch_lines({box(0, 0, 100, 100)}, 10, kEverywhere);
    REQUIRE(lines.size() > 2);
    for (const auto& line : lines)
        CHECK(line.to.x - line.from.x == Approx(line.to.y - line.from.y));
    const double step = (lines[1].from.x - lines[1].from.y) - (lines[0].from.x - lines[0].from.y);
    CHECK(std::abs(step) == Approx(10 * std::sqrt(2.0)));
}

TEST_CASE("A hatch covers a spacing of area with each mm of line") {
    CHECK(total_length(hatch_lines({box(0, 0, 1000, 600)}, 2, kEverywhere)) ==
          Approx(1000 * 600 / 2.0).epsilon(0.01));
}

TEST_CASE("Areas that overlap are hatched once") {
    const auto both = hatch_lines({box(0, 0, 600, 400), box(300, 0, 1000, 400)}, 2, kEverywhere);
    CHECK(total_length(both) == Approx(1000 * 400 / 2.0).epsilon(0.01));
}

TEST_CASE("A hatch leaves a notch free") {
    const Area notched = {{0, 0},   {100, 0}, {100, 100}, {60, 100},
                          {60, 40}, {40, 40}, {40, 100},  {0, 100}};
    CHECK(total_length(hatch_lines({notched}, 1, kEverywhere)) ==
          Approx(100 * 100 - 20 * 60).epsilon(0.02));
}

TEST_CASE("What is seen of a hatch does not move its lines") {
    const std::vector<Area> areas = {box(0, 0, 500, 500)};
    const Rect window{{120, 80}, {260, 300}};
    const auto all = hatch_lines(areas, 7, kEverywhere);
    const auto seen = hatch_lines(areas, 7, window);
    REQUIRE(!seen.empty());
    CHECK(seen.size() < all.size());
    for (const auto& line : seen) {
        CHECK(window.grown(1e-6).contains(line.from));
        CHECK(window.grown(1e-6).contains(line.to));
        bool is_part = false;
        for (const auto& whole : all)
            is_part = is_part ||
                      std::abs((whole.from.x - whole.from.y) - (line.from.x - line.from.y)) < 1e-6;
        CHECK(is_part);
    }
}

TEST_CASE("A hatch of nothing, of a line, and out of sight has no lines") {
    CHECK(hatch_lines({}, 2, kEverywhere).empty());
    CHECK(hatch_lines({{}}, 2, kEverywhere).empty());
    CHECK(hatch_lines({{{0, 0}, {100, 0}}}, 2, kEverywhere).empty());
    CHECK(hatch_lines({box(0, 0, 10, 10)}, 2, {{20, 20}, {30, 30}}).empty());
}

TEST_CASE("Every line of a hatch lies in its areas") {
    rc::check([] {
        const auto side = [](int from, int to) { return double(*rc::gen::inRange(from, to)); };
        std::vector<Area> areas;
        for (int i = 0; i < *rc::gen::inRange(1, 5); ++i) {
            const double left = side(0, 500);
            const double bottom = side(0, 500);
            areas.push_back(box(left, bottom, left + side(1, 300), bottom + side(1, 300)));
        }
        for (const auto& line : hatch_lines(areas, 5, kEverywhere)) {
            const geometry::Point<geometry::Wall> middle{(line.from.x + line.to.x) / 2,
                                                         (line.from.y + line.to.y) / 2};
            RC_ASSERT(is_in_any(areas, middle));
        }
    });
}
