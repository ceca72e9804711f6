#include "pages/sign.h"

#include "draw/paths.h"

#include <cmath>
#include <numbers>

namespace wallwright::pages {

namespace {

using draw::Ink;
using geometry::Page;
using wall::Severity;

/// Corners on a circle, the first turned by `turn` from straight up.
draw::Path<Page> regular(Spot middle, int corners, double radius, double turn, Ink ink) {
    std::vector<Spot> points;
    for (int i = 0; i < corners; ++i) {
        const double angle = turn + 2 * std::numbers::pi * i / corners;
        points.push_back(
            {middle.x + radius * std::sin(angle), middle.y - radius * std::cos(angle)});
    }
    return draw::polygon(points, {draw::Paint{ink}, std::nullopt});
}

}  // namespace

Ink ink_of(Severity severity) {
    switch (severity) {
        case Severity::stop:
            return Ink::stop;
        case Severity::mind:
            return Ink::mind;
        case Severity::note:
            return Ink::accent;
    }
    return Ink::text;
}

void add_sign(Shapes& shapes, Severity severity, Spot middle, double share) {
    const Ink ink = ink_of(severity);
    const double radius = share * kSignRadius;
    const auto letter = [&](const char* text, double down) {
        shapes.emplace_back(aligned(
            text_at({middle.x, middle.y + share * down}, text, {share * 2.2, true}, Ink::paper),
            draw::Align::centre));
    };
    switch (severity) {
        case Severity::stop: {
            const double half = share * 1.2;
            const double thick = share * 0.35;
            shapes.emplace_back(regular(middle, 8, radius, std::numbers::pi / 8, ink));
            shapes.emplace_back(draw::box(
                Area{{middle.x - half, middle.y - thick}, {middle.x + half, middle.y + thick}},
                {draw::Paint{Ink::paper}, std::nullopt}));
            break;
        }
        case Severity::mind:
            shapes.emplace_back(
                regular({middle.x, middle.y + share * 0.5}, 3, radius * 1.25, 0, ink));
            letter("!", 1.55);
            break;
        case Severity::note:
            shapes.emplace_back(draw::circle(middle, radius, {draw::Paint{ink}, std::nullopt}));
            letter("i", 1.1);
            break;
    }
}

}  // namespace wallwright::pages
