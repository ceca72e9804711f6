#include "draw/furnishings/silhouettes.h"

#include <algorithm>

namespace wallwright::draw::silhouettes {

namespace {

constexpr Colour kLinen{0xF4, 0xF1, 0xEA};
constexpr Colour kCover{0xC9, 0xD2, 0xD3};

/// Hangs over the mattress with a soft lower edge.
void cover(Shapes& shapes, const Rect<Wall>& place) {
    shapes.emplace_back(
        Pen<Wall>(at(place, {0.0, 0.14}))
            .curve(at(place, {0.2, 0.1}), at(place, {0.3, 0.17}), at(place, {0.5, 0.13}))
            .curve(at(place, {0.7, 0.09}), at(place, {0.8, 0.17}), at(place, {1.0, 0.14}))
            .line(at(place, {1.0, 0.44}))
            .curve(at(place, {1.0, 0.55}), at(place, {0.96, 0.57}), at(place, {0.9, 0.57}))
            .curve(at(place, {0.7, 0.6}), at(place, {0.3, 0.6}), at(place, {0.1, 0.57}))
            .curve(at(place, {0.04, 0.57}), at(place, {0.0, 0.55}), at(place, {0.0, 0.44}))
            .closed(solid(kCover)));
    const Stroke fold = contour(lighter(kCover, 0.2));
    shapes.emplace_back(
        Pen<Wall>(at(place, {0.18, 0.2}))
            .curve(at(place, {0.2, 0.3}), at(place, {0.17, 0.4}), at(place, {0.2, 0.5}))
            .drawn(fold));
    shapes.emplace_back(
        Pen<Wall>(at(place, {0.79, 0.19}))
            .curve(at(place, {0.8, 0.3}), at(place, {0.83, 0.4}), at(place, {0.8, 0.5}))
            .drawn(fold));
}

void pillow(Shapes& shapes, const Rect<Wall>& place) {
    shapes.emplace_back(
        Pen<Wall>(at(place, {0.04, 0.0}))
            .curve(at(place, {0.3, 0.06}), at(place, {0.7, 0.06}), at(place, {0.96, 0.0}))
            .curve(at(place, {1.0, 0.2}), at(place, {1.0, 0.8}), at(place, {0.97, 0.94}))
            .curve(at(place, {0.7, 1.0}), at(place, {0.3, 1.0}), at(place, {0.03, 0.94}))
            .curve(at(place, {0.0, 0.8}), at(place, {0.0, 0.2}), at(place, {0.04, 0.0}))
            .closed(solid(kLinen)));
}

}  // namespace

void bed(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const double post = std::min(70.0, place.width() / 12) / place.width();
    shapes.emplace_back(
        box(part(place, {0.02, 0}, {0.02 + post, 0.2}), solid(darker(colour, 0.2))));
    shapes.emplace_back(
        box(part(place, {0.98 - post, 0}, {0.98, 0.2}), solid(darker(colour, 0.2))));
    shapes.emplace_back(rounded_box(part(place, {0.0, 0.12}, {1, 1}), 90, solid(colour)));
    shapes.emplace_back(
        rounded_box(part(place, {0.03, 0.2}, {0.97, 0.94}), 60, {std::nullopt, contour(colour)}));
    const int pillows = std::min(2, parts_of(place.width(), 800));
    for (const Rect<Wall>& one : columns(part(place, {0.09, 0.5}, {0.91, 0.78}), pillows, 60))
        pillow(shapes, one);
    cover(shapes, part(place, {0.012, 0}, {0.988, 1}));
}

}  // namespace wallwright::draw::silhouettes
