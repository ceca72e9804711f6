#include "draw/furnishings/silhouettes.h"

#include <algorithm>

namespace wallwright::draw::silhouettes {

namespace {

/// A leaf on its stalk: where its tip is and how its back and belly bend, in shares of the room
/// above the pot.
struct Leaf {
    Share tip;
    Share back;
    Share belly;
    double tone;  ///< Less than 0 is darker.
};

constexpr Leaf kLeaves[] = {
    {{0.10, 0.86}, {0.20, 0.62}, {0.34, 0.70}, -0.22},
    {{0.90, 0.90}, {0.66, 0.72}, {0.82, 0.60}, -0.22},
    {{0.34, 1.00}, {0.28, 0.72}, {0.46, 0.80}, -0.10},
    {{0.70, 0.98}, {0.56, 0.76}, {0.72, 0.68}, -0.10},
    {{0.00, 0.46}, {0.14, 0.56}, {0.24, 0.30}, 0.00},
    {{1.00, 0.50}, {0.84, 0.58}, {0.76, 0.30}, 0.00},
    {{0.18, 0.20}, {0.20, 0.44}, {0.36, 0.16}, 0.12},
    {{0.84, 0.18}, {0.78, 0.42}, {0.62, 0.14}, 0.12},
    {{0.50, 0.80}, {0.38, 0.50}, {0.62, 0.50}, 0.16},
};

Colour toned(Colour colour, double tone) {
    return tone < 0 ? darker(colour, -tone) : lighter(colour, tone);
}

void leaf(Shapes& shapes, const Rect<Wall>& crown, const Leaf& one, Colour colour) {
    const Point<Wall> root = at(crown, {0.5, 0});
    const Point<Wall> tip = at(crown, one.tip);
    const Point<Wall> back = at(crown, one.back);
    const Point<Wall> belly = at(crown, one.belly);
    const Colour green = toned(colour, one.tone);
    const Point<Wall> low = at(crown, {0.5, 0.12});
    shapes.emplace_back(
        Pen<Wall>(root).curve(low, back, tip).curve(belly, low, root).closed(solid(green)));
}

}  // namespace

void plant(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const double pot_height = std::min(0.32 * place.height(), 0.8 * place.width());
    const Rect<Wall> crown{{place.min.x, place.min.y + 0.9 * pot_height}, place.max};
    for (const Leaf& one : kLeaves)
        leaf(shapes, crown, one, colour);

    constexpr Colour kClay{0xB9, 0x83, 0x67};
    const Rect<Wall> pot{{place.min.x, place.min.y}, {place.max.x, place.min.y + pot_height}};
    shapes.emplace_back(polygon<Wall>(
        {at(pot, {0.32, 0}), at(pot, {0.68, 0}), at(pot, {0.74, 0.82}), at(pot, {0.26, 0.82})},
        solid(kClay)));
    shapes.emplace_back(box(part(pot, {0.24, 0.8}, {0.76, 1}), solid(darker(kClay, 0.08))));
}

}  // namespace wallwright::draw::silhouettes
