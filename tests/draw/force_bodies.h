// Pieces in balance by hand, as hanging/forces.h gives them.
#pragma once

#include "hanging/forces.h"

#include <string>

namespace wallwright::test {

/// Two pairs of strips at the top, as far from each other as they go.
inline hanging::FreeBody on_strips(geometry::Size outside, double depth, double newton,
                                   int pairs = 2) {
    using hanging::ForceKind;
    hanging::FreeBody body{outside, depth, {}, {}, {}};
    const double x = outside.width / 2;
    const double y = outside.height / 2;
    body.forces.push_back({ForceKind::weight, "weight", {x, y, depth / 2}, {0, -newton, 0}});
    const double high = outside.height - 35;
    const double pull = newton * depth / 2 / high;
    for (int i = 0; i < pairs; ++i) {
        const hanging::Spatial at{i % 2 == 0 ? 15 : outside.width - 15,
                                  i < 2 ? high : high - 80.0 * (i / 2), 0};
        body.forces.push_back({ForceKind::carried, "pair", at, {0, newton / pairs, 0}});
        if (i < 2)
            body.forces.push_back({ForceKind::held, "pair", at, {0, 0, -pull / 2}});
    }
    body.forces.push_back({ForceKind::wall_push, "wall", {x, 0, 0}, {0, 0, pull}});
    body.worked = {{"Pull off the wall at the top pairs, from the depth of the centre of gravity",
                    "F = W z / h = 29.4 N x 18 mm / 300 mm = 1.8 N"},
                   {"On each pair", "W / n = 29.4 N / 2 = 14.7 N"}};
    body.remarks = {"Friction at the wall is left out; it only helps."};
    return body;
}

/// A cord 340 mm long between rings 300 mm apart on one hook: 80 mm of drop.
inline hanging::FreeBody on_one_hook(double newton) {
    using hanging::ForceKind;
    hanging::FreeBody body{{400, 300}, 30, {}, {}, {}};
    body.forces = {{ForceKind::weight, "weight", {200, 150, 15}, {0, -newton, 0}},
                   {ForceKind::carried, "hook", {200, 280, 0}, {0, newton, 0}},
                   {ForceKind::held, "hook", {200, 280, 0}, {0, 0, -newton * 15 / 280}},
                   {ForceKind::wall_push, "wall", {200, 0, 0}, {0, 0, newton * 15 / 280}}};
    body.cord = {{{50, 200, 0}, {200, 280, 0}}, {{350, 200, 0}, {200, 280, 0}}};
    body.worked = {
        {"Pull in the cord", "T = W / (2 sin a) = 19.6 N / (2 x sin 28.1 deg) = 20.8 N"}};
    return body;
}

/// Two hooks a third of the ring spacing apart, with their pull inward.
inline hanging::FreeBody on_two_hooks(double newton) {
    using hanging::ForceKind;
    hanging::FreeBody body = on_one_hook(newton);
    const double aside = 0.171 * newton;
    body.forces[1] = {ForceKind::carried, "left hook", {125, 258.3, 0}, {-aside, newton / 2, 0}};
    body.forces[2] = {ForceKind::held, "left hook", {125, 258.3, 0}, {0, 0, -newton * 15 / 516.6}};
    body.forces.push_back(
        {ForceKind::carried, "right hook", {275, 258.3, 0}, {aside, newton / 2, 0}});
    body.forces.push_back(
        {ForceKind::held, "right hook", {275, 258.3, 0}, {0, 0, -newton * 15 / 516.6}});
    body.cord = {{{50, 200, 0}, {125, 258.3, 0}},
                 {{125, 258.3, 0}, {275, 258.3, 0}},
                 {{350, 200, 0}, {275, 258.3, 0}}};
    return body;
}

/// Two rings on cords from a rail 900 mm above the frame.
inline hanging::FreeBody from_a_rail(double newton) {
    using hanging::ForceKind;
    hanging::FreeBody body{{600, 800}, 25, {}, {}, {}};
    body.forces = {{ForceKind::weight, "weight", {300, 400, 12.5}, {0, -newton, 0}},
                   {ForceKind::carried, "left cord", {60, 600, 0}, {0, newton / 2, 0}},
                   {ForceKind::carried, "right cord", {540, 600, 0}, {0, newton / 2, 0}},
                   {ForceKind::wall_push, "wall", {300, 0, 0}, {0, 0, newton * 12.5 / 600}}};
    body.cord = {{{60, 600, 0}, {60, 1700, 0}}, {{540, 600, 0}, {540, 1700, 0}}};
    return body;
}

}  // namespace wallwright::test
