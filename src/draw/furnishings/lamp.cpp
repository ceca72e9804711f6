#include "draw/furnishings/silhouettes.h"

#include <algorithm>

namespace wallwright::draw::silhouettes {

namespace {

constexpr Colour kMetal{0x4C, 0x47, 0x40};

void shade(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    shapes.emplace_back(
        Pen<Wall>(at(place, {0, 0}))
            .curve(at(place, {0.3, 0.04}), at(place, {0.7, 0.04}), at(place, {1, 0}))
            .line(at(place, {0.76, 1}))
            .line(at(place, {0.24, 1}))
            .closed(solid(colour)));
    shapes.emplace_back(polygon<Wall>({at(place, {0.3, 0.97}), at(place, {0.14, 0.05}),
                                       at(place, {0.34, 0.05}), at(place, {0.44, 0.97})},
                                      {own(lighter(colour, 0.35), 0.7), std::nullopt}));
}

void floor_lamp(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const double shade_height = std::min(0.22 * place.height(), 1.1 * place.width());
    const double middle = place.centre().x;
    const double pole = std::min(9.0, place.width() / 12);
    const double foot = std::min(28.0, 0.02 * place.height());
    shapes.emplace_back(box<Wall>(
        {{middle - pole, place.min.y + foot / 2}, {middle + pole, place.max.y - shade_height}},
        solid(kMetal)));
    const double half = 0.36 * place.width();
    shapes.emplace_back(
        rounded_box<Wall>({{middle - half, place.min.y}, {middle + half, place.min.y + foot}},
                          foot / 2, solid(kMetal)));
    shade(shapes, {{place.min.x, place.max.y - shade_height}, place.max}, colour);
}

void table_lamp(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const Rect<Wall> body = part(place, {0.3, 0}, {0.7, 0.58});
    shapes.emplace_back(
        Pen<Wall>(at(body, {0.2, 0}))
            .line(at(body, {0.8, 0}))
            .curve(at(body, {1.0, 0.2}), at(body, {1.0, 0.55}), at(body, {0.62, 0.8}))
            .line(at(body, {0.58, 1}))
            .line(at(body, {0.42, 1}))
            .line(at(body, {0.38, 0.8}))
            .curve(at(body, {0.0, 0.55}), at(body, {0.0, 0.2}), at(body, {0.2, 0}))
            .closed(solid({0x8E, 0xA0, 0x9F})));
    shade(shapes, part(place, {0, 0.52}, {1, 1}), colour);
}

}  // namespace

void lamp(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    if (place.height() > 2 * place.width())
        floor_lamp(shapes, place, colour);
    else
        table_lamp(shapes, place, colour);
}

}  // namespace wallwright::draw::silhouettes
