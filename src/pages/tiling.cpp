#include "pages/tiling.h"

#include "draw/letters.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace wallwright::pages {

namespace {

using geometry::Rect;
using geometry::Size;
using geometry::Wall;

int count_for(double length, double room, double overlap) {
    constexpr double kRounding = 1e-9;
    return std::max(1,
                    static_cast<int>(std::ceil((length - overlap) / (room - overlap) - kRounding)));
}

bool shows(const Rect<Wall>& tile, std::span<const Rect<Wall>> seen) {
    return std::ranges::any_of(seen, [&](const Rect<Wall>& one) { return touch(tile, one); });
}

/// Which tiles are printed, and which of them hang together with the first.
class Grid {
  public:
    Grid(const Tiling& tiling, std::span<const Rect<Wall>> seen) : tiling_(tiling) {
        for (int row = 0; row < tiling.rows; ++row)
            for (int column = 0; column < tiling.columns; ++column)
                printed_.push_back(shows(tiling.shown({row, column}), seen));
    }

    [[nodiscard]] std::vector<TileIndex> printed() const {
        std::vector<TileIndex> tiles;
        for (std::size_t i = 0; i < printed_.size(); ++i)
            if (printed_[i])
                tiles.push_back(index_of(i));
        return tiles;
    }

    /// Adds the tile above each that does not hang together with the first; false when none was
    /// added.
    bool lead_upward() {
        const std::vector<bool> linked = linked_to_first();
        bool added = false;
        for (const TileIndex tile : printed()) {
            const TileIndex above{tile.row - 1, tile.column};
            if (linked[place_of(tile)] || tile.row == 0 || printed_[place_of(above)])
                continue;
            printed_[place_of(above)] = true;
            added = true;
        }
        return added;
    }

  private:
    [[nodiscard]] std::size_t place_of(TileIndex tile) const {
        return static_cast<std::size_t>(tile.row) * static_cast<std::size_t>(tiling_.columns) +
               static_cast<std::size_t>(tile.column);
    }
    [[nodiscard]] TileIndex index_of(std::size_t place) const {
        const int index = static_cast<int>(place);
        return {index / tiling_.columns, index % tiling_.columns};
    }
    [[nodiscard]] bool is_printed(TileIndex tile) const {
        return tile.row >= 0 && tile.row < tiling_.rows && tile.column >= 0 &&
               tile.column < tiling_.columns && printed_[place_of(tile)];
    }

    [[nodiscard]] std::vector<bool> linked_to_first() const {
        std::vector<bool> linked(printed_.size(), false);
        std::vector<TileIndex> next = printed();
        next.resize(std::min<std::size_t>(next.size(), 1));
        while (!next.empty()) {
            const TileIndex tile = next.back();
            next.pop_back();
            if (!is_printed(tile) || linked[place_of(tile)])
                continue;
            linked[place_of(tile)] = true;
            for (const auto& [down, aside] :
                 {std::pair(1, 0), std::pair(-1, 0), std::pair(0, 1), std::pair(0, -1)})
                next.push_back({tile.row + down, tile.column + aside});
        }
        return linked;
    }

    const Tiling& tiling_;
    std::vector<bool> printed_;
};

}  // namespace

Size Tiling::tile() const {
    return {(whole.width() + overlap * (columns - 1)) / columns,
            (whole.height() + overlap * (rows - 1)) / rows};
}

Rect<Wall> Tiling::shown(TileIndex index) const {
    const Size size = tile();
    const double left = whole.left() + index.column * (size.width - overlap);
    const double top = whole.top() - index.row * (size.height - overlap);
    return {{left, top - size.height}, {left + size.width, top}};
}

Tiling tiling_of(const Rect<Wall>& whole, Size room, double overlap) {
    return {whole, overlap, count_for(whole.height(), room.height, overlap),
            count_for(whole.width(), room.width, overlap)};
}

std::string name_of(TileIndex index) {
    return draw::letter(static_cast<std::size_t>(index.row)) + std::to_string(index.column + 1);
}

std::vector<TileIndex> tiles_to_print(const Tiling& tiling, std::span<const Rect<Wall>> seen) {
    Grid grid(tiling, seen);
    while (grid.lead_upward())
        continue;
    return grid.printed();
}

}  // namespace wallwright::pages
