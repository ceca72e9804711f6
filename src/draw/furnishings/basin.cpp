#include "draw/furnishings/silhouettes.h"

#include <algorithm>

namespace wallwright::draw::silhouettes {

/// A bowl on the wall with its tap, and the trap below that says where the pipes are.
void basin(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const Look china = solid(colour);
    const Look metal = solid(darker(colour, 0.25));
    const double pipe = std::min(16.0, place.width() / 20);
    const double middle = place.centre().x;
    shapes.emplace_back(
        box<Wall>({{middle - pipe, place.min.y}, {middle + pipe, at(place, {0, 0.5}).y}}, metal));
    shapes.emplace_back(box<Wall>(
        {{middle - pipe / 2, at(place, {0, 0.85}).y}, {middle + pipe / 2, place.max.y}}, metal));
    shapes.emplace_back(rounded_box(part(place, {0.06, 0.3}, {0.94, 0.8}),
                                    std::min(0.2 * place.width(), 0.2 * place.height()), china));
    shapes.emplace_back(box(part(place, {0, 0.76}, {1, 0.88}), china));
}

}  // namespace wallwright::draw::silhouettes
