#include "draw/furnishings/silhouettes.h"

#include <algorithm>

namespace wallwright::draw::silhouettes {

namespace {

constexpr Colour kSky{0xDD, 0xE8, 0xEC};

void pane(Shapes& shapes, const Rect<Wall>& place) {
    shapes.emplace_back(box(place, solid(kSky)));
    const Look gleam{own({255, 255, 255}, 0.55), std::nullopt};
    shapes.emplace_back(polygon<Wall>({at(place, {0.1, 0.45}), at(place, {0.25, 0.45}),
                                       at(place, {0.7, 0.95}), at(place, {0.55, 0.95})},
                                      gleam));
    shapes.emplace_back(polygon<Wall>({at(place, {0.32, 0.45}), at(place, {0.37, 0.45}),
                                       at(place, {0.82, 0.95}), at(place, {0.77, 0.95})},
                                      gleam));
}

}  // namespace

void window(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const double sill = std::min(40.0, place.height() / 12);
    const double frame = std::min({60.0, place.width() / 10, place.height() / 10});
    const Rect<Wall> casement{{place.min.x + frame / 3, place.min.y + sill},
                              {place.max.x - frame / 3, place.max.y}};
    shapes.emplace_back(box(casement, solid(darker(colour, 0.04))));
    for (const Rect<Wall>& sash :
         columns(casement.grown(-frame / 2), parts_of(casement.width(), 600), frame / 5)) {
        shapes.emplace_back(box(sash, solid(colour)));
        pane(shapes, sash.grown(-std::min(frame, sash.width() / 4)));
    }
    shapes.emplace_back(
        rounded_box<Wall>({place.min, {place.max.x, place.min.y + sill}}, sill / 3, solid(colour)));
}

}  // namespace wallwright::draw::silhouettes
