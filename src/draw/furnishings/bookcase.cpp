#include "base/random.h"
#include "draw/furnishings/silhouettes.h"

#include <algorithm>

namespace wallwright::draw::silhouettes {

namespace {

constexpr Colour kSpines[] = {{0x7B, 0x8C, 0x93}, {0xA8, 0x6A, 0x5B}, {0x8A, 0x94, 0x78},
                              {0xC3, 0xA9, 0x76}, {0x6B, 0x6F, 0x84}, {0xB9, 0xB2, 0xA4},
                              {0x8C, 0x6F, 0x61}};

/// Books from the left until the shelf is nearly full; the same seed gives the same books.
void books(Shapes& shapes, const Rect<Wall>& shelf, Random& random) {
    const double full = shelf.min.x + shelf.width() * random.uniform(0.6, 0.97);
    double left = shelf.min.x;
    while (true) {
        const double thick = random.uniform(18, 46);
        const double tall = shelf.height() * random.uniform(0.6, 0.88);
        const Colour colour = kSpines[random.below(std::size(kSpines))];
        if (left + thick > full)
            return;
        shapes.emplace_back(
            box<Wall>({{left, shelf.min.y}, {left + thick, shelf.min.y + tall}}, solid(colour)));
        left += thick;
    }
}

}  // namespace

void bookcase(Shapes& shapes, const Rect<Wall>& place, Colour colour) {
    const double board = std::min({24.0, place.width() / 12, place.height() / 12});
    shapes.emplace_back(box(place, solid(colour)));
    const Rect<Wall> inner = place.grown(-board);
    const int shelves = parts_of(inner.height(), 340);
    const double pitch = (inner.height() + board) / shelves;
    const Look back = solid(darker(colour, 0.3));
    Random random(7);
    for (int i = 0; i < shelves; ++i) {
        const double bottom = inner.min.y + i * pitch;
        const Rect<Wall> shelf{{inner.min.x, bottom}, {inner.max.x, bottom + pitch - board}};
        shapes.emplace_back(box(shelf, back));
        books(shapes, shelf, random);
    }
}

}  // namespace wallwright::draw::silhouettes
