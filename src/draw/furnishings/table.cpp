#include "draw/furnishings/silhouettes.h"

#include <algorithm>

namespace wallwright::draw::silhouettes {

void table(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const double top = std::min(32.0, 0.08 * place.height());
    const double apron = std::min(80.0, 0.14 * place.height());
    const double leg = std::min(60.0, place.width() / 10);
    const double inset = std::min(50.0, place.width() / 14);
    const double under_top = place.max.y - top;

    shapes.emplace_back(box<Wall>(
        {{place.min.x + inset + leg, under_top - apron}, {place.max.x - inset - leg, under_top}},
        solid(darker(colour, 0.12))));
    const Look legs = solid(darker(colour, 0.05));
    shapes.emplace_back(polygon<Wall>({{place.min.x + inset, place.min.y},
                                       {place.min.x + inset + 0.55 * leg, place.min.y},
                                       {place.min.x + inset + leg, under_top},
                                       {place.min.x + inset, under_top}},
                                      legs));
    shapes.emplace_back(polygon<Wall>({{place.max.x - inset, place.min.y},
                                       {place.max.x - inset - 0.55 * leg, place.min.y},
                                       {place.max.x - inset - leg, under_top},
                                       {place.max.x - inset, under_top}},
                                      legs));
    shapes.emplace_back(
        rounded_box<Wall>({{place.min.x, under_top}, place.max}, 8, solid(lighter(colour, 0.06))));
}

}  // namespace wallwright::draw::silhouettes
