#include "draw/forces.h"

#include "draw/force_bodies.h"
#include "draw/looking.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace wallwright;
using namespace wallwright::test;
using units::LengthUnit;

namespace {

/// mm on paper of the shafts in this ink that stand upright, without the points' circles.
std::vector<double> upright_shafts(const draw::WallDrawing& drawing, draw::Ink ink, double scale) {
    std::vector<double> lengths;
    for (const WallPath& path : shapes_in<WallPath>(drawing.shapes)) {
        const bool shaft = path.steps.size() == 1 && path.stroke && path.stroke->paint.ink == ink &&
                           path.stroke->width == 0.5 &&
                           std::abs(path.start.x - path.steps[0].to.x) < 1e-6;
        if (shaft)
            lengths.push_back(scale * std::abs(path.start.y - path.steps[0].to.y));
    }
    return lengths;
}

}  // namespace

TEST_CASE("Figures of a force drawing never run into each other or out of it") {
    for (const int pairs : {2, 4, 6, 8})
        for (const geometry::Size outside :
             {geometry::Size{100, 150}, {300, 400}, {700, 250}, {250, 900}})
            for (const double scale : {0.02, 0.05, 0.1}) {
                CAPTURE(pairs, outside.width, outside.height, scale);
                const auto drawing = draw::force_drawing(on_strips(outside, 20, 30, pairs),
                                                         {scale, LengthUnit::inch, true});
                CHECK(clashes(drawing, scale).empty());
            }
    for (const auto& body : {on_one_hook(19.6), on_two_hooks(300), from_a_rail(90)})
        CHECK(clashes(draw::force_drawing(body, {0.05, LengthUnit::mm, true}), 0.05).empty());
}

TEST_CASE("Every force has its number, in the person's unit") {
    const auto metric = draw::force_drawing(on_two_hooks(20), {0.1, LengthUnit::mm, false});
    CHECK(count_text(metric, "20.0 N") == 2);  // the weight, and what both hooks carry
    CHECK(count_text(metric, "10.6 N") == 2);  // each hook, its pull inward with it
    const auto inches = draw::force_drawing(on_two_hooks(20), {0.1, LengthUnit::inch, false});
    CHECK(count_text(inches, "4.5 lbf") == 2);
    CHECK(count_text(inches, "20.0 N") == 0);
}

TEST_CASE("Of many pairs one says what each carries") {
    const auto drawing =
        draw::force_drawing(on_strips({500, 700}, 30, 60, 6), {0.05, LengthUnit::mm, false});
    CHECK(count_text(drawing, "each 10.0 N") == 1);
    CHECK(count_text(drawing, "10.0 N") == 0);
    CHECK(count_text(drawing, "each 20.0 N") == 1);  // from the side, two at each height
}

TEST_CASE("Arrows are as long as their forces are strong") {
    constexpr double kScale = 0.1;
    const auto drawing =
        draw::force_drawing(on_strips({300, 400}, 20, 30), {kScale, LengthUnit::mm, false});
    auto carried = upright_shafts(drawing, draw::Ink::accent, kScale);
    REQUIRE(carried.size() == 3);  // each pair from the front, both together from the side
    std::ranges::sort(carried);
    CHECK(carried[0] == Approx(carried[1]));
    CHECK(carried[2] == Approx(carried[0] + carried[1]));
}

TEST_CASE("A cord to a rail far above is broken off near the frame") {
    const auto drawing = draw::force_drawing(from_a_rail(90), {0.05, LengthUnit::mm, false});
    CHECK(drawing.extent.max.y < 800 + 20 / 0.05);
}

TEST_CASE("Formulas stand below the views, and only where they are asked for") {
    const auto without = draw::force_drawing(on_one_hook(19.6), {0.1, LengthUnit::mm, false});
    const auto with = draw::force_drawing(on_one_hook(19.6), {0.1, LengthUnit::mm, true});
    CHECK(count_text(without, "Pull in the cord") == 0);
    CHECK(count_text(with, "Pull in the cord") == 1);
    CHECK(with.extent.min.y < without.extent.min.y);
    CHECK(with.extent.max.y == without.extent.max.y);
}

TEST_CASE("A drawing of forces has the recorded shapes") {
    check_golden("forces_two_hooks.txt", draw::to_text(draw::force_drawing(
                                             on_two_hooks(19.6), {0.1, LengthUnit::mm, true})));
}

TEST_CASE("A drawing of forces is made as large as a width allows") {
    for (const auto& body : {on_strips({400, 500}, 22, 15.8), on_two_hooks(300), from_a_rail(90),
                             on_strips({100, 150}, 15, 4), on_strips({700, 250}, 20, 30, 4)}) {
        constexpr double kWidth = 57;
        const auto [scale, drawing] =
            draw::force_drawing_within(body, {1, LengthUnit::mm, true}, kWidth);
        CHECK(drawing.extent.width() * scale <= kWidth);
        CHECK(clashes(drawing, scale).empty());
        // The frame itself is never squeezed to nothing beside its words.
        CHECK(body.outside.width * scale > 12);
    }
}
