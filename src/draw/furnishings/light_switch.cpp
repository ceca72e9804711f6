#include "draw/furnishings/silhouettes.h"

#include <algorithm>

namespace wallwright::draw::silhouettes {

void light_switch(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const double size = std::min(place.width(), place.height());
    shapes.emplace_back(rounded_box(place, size / 10, solid(darker(colour, 0.08))));
    for (const Rect<Wall>& one : columns(place, parts_of(place.width(), place.height()), 0)) {
        const Rect<Wall> rocker = part(one, {0.28, 0.2}, {0.72, 0.8});
        shapes.emplace_back(rounded_box(rocker, size / 20, solid(colour)));
        shapes.emplace_back(line(at(rocker, {0, 0.5}), at(rocker, {1, 0.5}), contour(colour)));
    }
}

}  // namespace wallwright::draw::silhouettes
