#include "pages/key_map.h"

#include "draw/paths.h"
#include "pages/render.h"

#include <algorithm>

namespace wallwright::pages {

namespace {

using draw::Ink;
using geometry::Page;
using geometry::Rect;
using geometry::Wall;

/// The tile without what it shares: neighbours meet half way into their overlap.
Rect<Wall> cell_of(const Tiling& tiling, TileIndex index) {
    Rect<Wall> cell = tiling.shown(index);
    const double half = tiling.overlap / 2;
    cell.min.x += index.column > 0 ? half : 0;
    cell.max.x -= index.column + 1 < tiling.columns ? half : 0;
    cell.max.y -= index.row > 0 ? half : 0;
    cell.min.y += index.row + 1 < tiling.rows ? half : 0;
    return cell;
}

void add_name(Shapes& shapes, const Area& cell, TileIndex index, Ink ink) {
    constexpr Type kName{1.8, true};
    const std::string name = name_of(index);
    if (text_width(name, kName.size, true) + 0.8 > cell.width() || cell.height() < 2.8)
        return;
    shapes.emplace_back(
        aligned(text_at({cell.centre().x, cell.centre().y + kName.size / 2}, name, kName, ink),
                draw::Align::centre));
}

}  // namespace

Area add_key_map(Shapes& shapes, Spot upper_right, geometry::Size most, const KeyMap& map) {
    const Rect<Wall>& whole = map.tiling.whole;
    const double scale = std::min(most.width / whole.width(), most.height / whole.height());
    const geometry::Transform<Wall, Page> to_page{
        {upper_right.x - scale * whole.max.x, upper_right.y + scale * whole.max.y}, scale};
    const draw::Stroke thin{{Ink::outline}, 0.18};
    const draw::Stroke dotted{{Ink::hidden}, 0.18, draw::LineType::dotted};
    for (int row = 0; row < map.tiling.rows; ++row)
        for (int column = 0; column < map.tiling.columns; ++column) {
            const TileIndex index{row, column};
            const Area cell = to_page(cell_of(map.tiling, index));
            const bool printed = std::ranges::find(map.printed, index) != map.printed.end();
            const bool here = index == map.here;
            draw::Look look{std::nullopt, printed ? thin : dotted};
            if (here)
                look.fill = draw::Paint{Ink::accent};
            shapes.emplace_back(draw::box(printed ? cell : cell.grown(-0.4), look));
            if (printed)
                add_name(shapes, cell, index, here ? Ink::paper : Ink::text);
        }
    for (const Rect<Wall>& place : map.places)
        shapes.emplace_back(
            draw::box(to_page(place), {std::nullopt, draw::Stroke{{Ink::mark, {}, 0.7}, 0.25}}));
    return to_page(whole);
}

}  // namespace wallwright::pages
