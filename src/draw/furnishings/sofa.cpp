#include "draw/furnishings/silhouettes.h"

#include <algorithm>

namespace wallwright::draw::silhouettes {

namespace {

constexpr double kLegShare = 0.07;
constexpr Colour kLegs{0x5B, 0x4A, 0x3A};

void legs(Shapes& shapes, const Rect<Wall>& place, double inset) {
    const double top = place.min.y + kLegShare * place.height();
    const double wide = std::min(55.0, place.width() / 12);
    for (const double left : {place.min.x + inset, place.max.x - inset - wide})
        shapes.emplace_back(polygon<Wall>({{left + wide * 0.2, place.min.y},
                                           {left + wide * 0.8, place.min.y},
                                           {left + wide, top},
                                           {left, top}},
                                          solid(kLegs)));
}

}  // namespace

void sofa(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const double arm = std::min(0.11 * place.width(), 210.0);
    const double radius = std::min(0.15 * place.height(), 110.0);
    const double arm_share = arm / place.width();
    legs(shapes, place, arm * 0.35);
    shapes.emplace_back(rounded_box(part(place, {0.5 * arm_share, 0.25}, {1 - 0.5 * arm_share, 1}),
                                    radius, solid(colour)));

    const Rect<Wall> seat = part(place, {arm_share, 0.07}, {1 - arm_share, 1});
    const int seats = std::min(4, parts_of(seat.width(), 750));
    const Look back_cushion = solid(lighter(colour, 0.07));
    for (const Rect<Wall>& cushion : columns(part(seat, {0.01, 0.42}, {0.99, 0.94}), seats, 14))
        shapes.emplace_back(rounded_box(cushion, radius * 0.6, back_cushion));
    shapes.emplace_back(box(part(seat, {0, 0}, {1, 0.3}), solid(darker(colour, 0.07))));
    const Look seat_cushion = solid(lighter(colour, 0.16));
    for (const Rect<Wall>& cushion : columns(part(seat, {0.004, 0.27}, {0.996, 0.5}), seats, 8))
        shapes.emplace_back(rounded_box(cushion, radius * 0.45, seat_cushion));

    const Look arms = solid(darker(colour, 0.13));
    shapes.emplace_back(
        rounded_box(part(place, {0, kLegShare}, {arm_share, 0.74}), arm * 0.4, arms));
    shapes.emplace_back(
        rounded_box(part(place, {1 - arm_share, kLegShare}, {1, 0.74}), arm * 0.4, arms));
}

}  // namespace wallwright::draw::silhouettes
