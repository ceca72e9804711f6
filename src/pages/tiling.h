// A rectangle on several sheets that overlap: equal tiles in rows and columns.
#pragma once

#include "geometry/rect.h"

#include <span>
#include <string>
#include <vector>

namespace wallwright::pages {

/// Row 0 is the topmost.
struct TileIndex {
    int row = 0;
    int column = 0;
    bool operator==(const TileIndex&) const = default;
};

struct Tiling {
    geometry::Rect<geometry::Wall> whole;
    double overlap = 0;  ///< mm that neighbours both show.
    int rows = 1;
    int columns = 1;

    [[nodiscard]] geometry::Size tile() const;  ///< mm of each.
    [[nodiscard]] geometry::Rect<geometry::Wall> shown(TileIndex index) const;
};

/// The fewest rows and columns of tiles no larger than `room`, which is larger than the overlap.
Tiling tiling_of(const geometry::Rect<geometry::Wall>& whole, geometry::Size room, double overlap);

/// "A1" is the upper left one, "B1" below it.
std::string name_of(TileIndex index);

/// The tiles that show some of what must be seen and, where one would lie apart from the others,
/// those above it, so that all can be taped to each other; row by row from the left.
std::vector<TileIndex> tiles_to_print(const Tiling& tiling,
                                      std::span<const geometry::Rect<geometry::Wall>> seen);

}  // namespace wallwright::pages
