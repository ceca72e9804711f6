#include "draw/furnishings/silhouettes.h"

#include <algorithm>

namespace wallwright::draw::silhouettes {

void radiator(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const double foot = std::min(0.12 * place.height(), 60.0);
    const double pipe = std::min(11.0, place.width() / 20);
    const Look metal = solid(darker(colour, 0.12));
    for (const double x : {place.min.x + 3 * pipe, place.max.x - 3 * pipe})
        shapes.emplace_back(
            box<Wall>({{x - pipe, place.min.y}, {x + pipe, place.min.y + 2 * foot}}, metal));
    const Rect<Wall> body{{place.min.x, place.min.y + foot}, place.max};
    const Look fin = solid(colour);
    for (const Rect<Wall>& one : columns(body, parts_of(body.width(), 60), 6))
        shapes.emplace_back(rounded_box(one, one.width() / 2, fin));
    const Look bar = solid(darker(colour, 0.03));
    shapes.emplace_back(box(part(body, {0.01, 0.06}, {0.99, 0.11}), bar));
    shapes.emplace_back(box(part(body, {0.01, 0.89}, {0.99, 0.94}), bar));
}

}  // namespace wallwright::draw::silhouettes
