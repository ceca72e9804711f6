#include "draw/furnishings/silhouettes.h"

#include <algorithm>

namespace wallwright::draw::silhouettes {

void socket(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const double size = std::min(place.width(), place.height());
    shapes.emplace_back(rounded_box(place, size / 10, solid(darker(colour, 0.08))));
    const Look well = solid(darker(colour, 0.2));
    const Look hole = solid({0x4A, 0x47, 0x43});
    for (const Rect<Wall>& one : columns(place, parts_of(place.width(), place.height()), 0)) {
        const double radius = 0.36 * std::min(one.width(), one.height());
        const Point<Wall> middle = one.centre();
        shapes.emplace_back(circle(middle, radius, well));
        for (const double side : {-0.5, 0.5})
            shapes.emplace_back(
                circle<Wall>({middle.x + side * radius, middle.y}, radius * 0.16, hole));
    }
}

}  // namespace wallwright::draw::silhouettes
