#include "app/triangulate.h"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace wallwright::app;

namespace {

using Corners = std::vector<ImVec2>;

std::vector<ImDrawIdx> triangles_of(const Corners& corners) {
    std::vector<ImDrawIdx> triangles;
    triangulate(corners, triangles);
    return triangles;
}

double area_of(const Corners& corners, const std::vector<ImDrawIdx>& triangles, std::size_t first) {
    const Corners triangle = {corners[triangles[first]], corners[triangles[first + 1]],
                              corners[triangles[first + 2]]};
    return std::abs(twice_area(triangle)) / 2;
}

double area_of(const Corners& corners, const std::vector<ImDrawIdx>& triangles) {
    double sum = 0;
    for (std::size_t i = 0; i < triangles.size(); i += 3)
        sum += area_of(corners, triangles, i);
    return sum;
}

/// By the number of sides to the right of the point.
bool is_inside(const Corners& corners, double x, double y) {
    bool inside = false;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const ImVec2 a = corners[i];
        const ImVec2 b = corners[(i + 1) % corners.size()];
        if ((a.y > y) != (b.y > y) &&
            x < a.x + (y - a.y) / (double{b.y} - a.y) * (double{b.x} - a.x))
            inside = !inside;
    }
    return inside;
}

/// Corners at rising angles about a middle: simple whatever the distances are.
Corners star_of(const std::vector<int>& distances) {
    Corners corners;
    for (std::size_t i = 0; i < distances.size(); ++i) {
        const double angle =
            2 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(distances.size());
        corners.push_back({static_cast<float>(500 + distances[i] * std::cos(angle)),
                           static_cast<float>(500 + distances[i] * std::sin(angle))});
    }
    return corners;
}

const Corners kStair = {{0, 0},   {100, 0}, {100, 30}, {80, 30}, {80, 50},
                        {60, 50}, {60, 70}, {40, 70},  {40, 90}, {0, 90}};

}  // namespace

TEST_CASE("A stair's triangles cover it, whichever way round it goes") {
    Corners corners = kStair;
    const double area = std::abs(twice_area(corners)) / 2;
    CHECK(area_of(corners, triangles_of(corners)) == Approx(area));
    std::reverse(corners.begin(), corners.end());
    CHECK(area_of(corners, triangles_of(corners)) == Approx(area));
}

TEST_CASE("Corners on one line and corners in one place change nothing") {
    const Corners corners = {{0, 0}, {50, 0}, {50, 0}, {100, 0}, {100, 100}, {50, 100}, {0, 100}};
    CHECK(area_of(corners, triangles_of(corners)) == Approx(10000));
}

TEST_CASE("A ring joined to its hole by a slit is filled but for the hole") {
    const Corners corners = {{0, 0},   {100, 0}, {100, 100}, {0, 100}, {0, 0},
                             {25, 25}, {25, 75}, {75, 75},   {75, 25}, {25, 25}};
    CHECK(area_of(corners, triangles_of(corners)) == Approx(7500));
}

TEST_CASE("What has no area has no triangles") {
    CHECK(triangles_of({}).empty());
    CHECK(triangles_of({{1, 1}}).empty());
    CHECK(triangles_of({{1, 1}, {2, 2}}).empty());
    CHECK(triangles_of({{0, 0}, {10, 0}, {20, 0}, {5, 0}}).empty());
    CHECK(triangles_of({{3, 3}, {3, 3}, {3, 3}, {3, 3}}).empty());
}

TEST_CASE("Triangles of a simple polygon add up to its area and lie inside") {
    rc::check([] {
        const auto distances =
            *rc::gen::suchThat(rc::gen::container<std::vector<int>>(rc::gen::inRange(5, 400)),
                               [](const std::vector<int>& all) { return all.size() >= 3; });
        const Corners corners = star_of(distances);
        const auto triangles = triangles_of(corners);
        const double area = std::abs(twice_area(corners)) / 2;
        RC_ASSERT(std::abs(area_of(corners, triangles) - area) < 1e-3 * area + 0.01);
        for (std::size_t i = 0; i < triangles.size(); i += 3) {
            if (area_of(corners, triangles, i) < 1)
                continue;
            double x = 0;
            double y = 0;
            for (std::size_t corner = i; corner < i + 3; ++corner) {
                x += double{corners[triangles[corner]].x} / 3;
                y += double{corners[triangles[corner]].y} / 3;
            }
            RC_ASSERT(is_inside(corners, x, y));
        }
    });
}

TEST_CASE("Corners in any order come to an end, with indices of corners only") {
    rc::check([](const std::vector<std::pair<signed char, signed char>>& points) {
        Corners corners;
        for (const auto& [x, y] : points)
            corners.push_back({static_cast<float>(x), static_cast<float>(y)});
        const auto triangles = triangles_of(corners);
        RC_ASSERT(triangles.size() % 3 == 0);
        RC_ASSERT(triangles.size() <= 3 * corners.size());
        for (const ImDrawIdx corner : triangles)
            RC_ASSERT(corner < corners.size());
    });
}
