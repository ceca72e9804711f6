#include "draw/furnishings/silhouettes.h"

#include <algorithm>

namespace wallwright::draw::silhouettes {

void cot(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const double post = std::min(45.0, place.width() / 10);
    const double rail = std::min(50.0, place.height() / 12);
    const Look wood = solid(colour);
    const Rect<Wall> inner{{place.min.x + post, place.min.y + 0.18 * place.height()},
                           {place.max.x - post, place.max.y - 0.06 * place.height()}};

    shapes.emplace_back(box(part(inner, {0, 0.12}, {1, 0.3}), solid({0xF4, 0xF1, 0xEA})));
    const int bars = std::max(2, parts_of(inner.width(), 85));
    const double pitch = inner.width() / bars;
    for (int i = 1; i < bars; ++i) {
        const double x = inner.min.x + i * pitch;
        shapes.emplace_back(
            box<Wall>({{x - 7, inner.min.y + rail}, {x + 7, inner.max.y - rail}}, wood));
    }
    shapes.emplace_back(box<Wall>({inner.min, {inner.max.x, inner.min.y + rail}}, wood));
    shapes.emplace_back(box<Wall>({{inner.min.x, inner.max.y - rail}, inner.max}, wood));
    for (const double left : {place.min.x, place.max.x - post})
        shapes.emplace_back(rounded_box<Wall>({{left, place.min.y}, {left + post, place.max.y}},
                                              post / 3, solid(darker(colour, 0.08))));
}

}  // namespace wallwright::draw::silhouettes
