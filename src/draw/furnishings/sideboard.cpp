#include "draw/furnishings/silhouettes.h"

#include <algorithm>

namespace wallwright::draw::silhouettes {

void sideboard(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const double leg_height = std::min(160.0, 0.2 * place.height());
    const double top = std::min(30.0, 0.08 * place.height());
    const double leg = std::min(45.0, place.width() / 10);
    const double inset = std::min(80.0, place.width() / 8);
    const double floor = place.min.y;
    const double under = floor + leg_height;
    const Look legs = solid(darker(colour, 0.25));
    shapes.emplace_back(polygon<Wall>({{place.min.x + inset * 0.6, floor},
                                       {place.min.x + inset * 0.6 + leg * 0.5, floor},
                                       {place.min.x + inset + leg, under},
                                       {place.min.x + inset, under}},
                                      legs));
    shapes.emplace_back(polygon<Wall>({{place.max.x - inset * 0.6, floor},
                                       {place.max.x - inset * 0.6 - leg * 0.5, floor},
                                       {place.max.x - inset - leg, under},
                                       {place.max.x - inset, under}},
                                      legs));

    const double overhang = std::min(8.0, place.width() / 20);
    const Rect<Wall> body{{place.min.x + overhang, under},
                          {place.max.x - overhang, place.max.y - top}};
    shapes.emplace_back(box(body, solid(colour)));
    const double margin = std::min({14.0, body.height() / 10, body.width() / 10});
    const Look front = solid(lighter(colour, 0.09));
    const Look knob = solid(darker(colour, 0.35));
    for (const Rect<Wall>& leaf : columns(body.grown(-margin), parts_of(body.width(), 460), 8)) {
        shapes.emplace_back(box(leaf, front));
        const double radius = std::min({11.0, leaf.height() / 12, leaf.width() / 4});
        shapes.emplace_back(circle(at(leaf, {0.5, 0.86}), radius, knob));
    }
    shapes.emplace_back(rounded_box<Wall>({{place.min.x, place.max.y - top}, place.max}, 6,
                                          solid(darker(colour, 0.1))));
}

}  // namespace wallwright::draw::silhouettes
