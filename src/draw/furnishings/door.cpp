#include "draw/furnishings/silhouettes.h"

#include <algorithm>

namespace wallwright::draw::silhouettes {

void door(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const double casing = std::min({70.0, place.width() / 9, place.height() / 9});
    shapes.emplace_back(box(place, solid(darker(colour, 0.05))));
    const Rect<Wall> leaf{{place.min.x + casing, place.min.y},
                          {place.max.x - casing, place.max.y - casing}};
    shapes.emplace_back(box(leaf, solid(colour)));
    const Look panel{own(darker(colour, 0.03)), contour(lighter(colour, 0.2))};
    shapes.emplace_back(box(part(leaf, {0.16, 0.08}, {0.84, 0.42}), panel));
    shapes.emplace_back(box(part(leaf, {0.16, 0.54}, {0.84, 0.93}), panel));
    const Point<Wall> handle = at(leaf, {0.93, 0.49});
    const double size = std::min({24.0, leaf.width() / 20, leaf.height() / 20});
    const Look metal = solid({0x9C, 0x96, 0x8B});
    shapes.emplace_back(rounded_box<Wall>(
        {{handle.x - 4.5 * size, handle.y - 0.4 * size}, {handle.x, handle.y + 0.4 * size}}, size,
        metal));
    shapes.emplace_back(circle(handle, 0.8 * size, metal));
}

}  // namespace wallwright::draw::silhouettes
