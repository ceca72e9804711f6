// A small map of how pages lie beside each other.
#pragma once

#include "pages/sheet.h"
#include "pages/tiling.h"

#include <vector>

namespace wallwright::pages {

struct KeyMap {
    const Tiling& tiling;
    const std::vector<TileIndex>& printed;
    const std::vector<geometry::Rect<geometry::Wall>>& places;  ///< Outlines to show on it.
    TileIndex here;                                             ///< Filled.
};

/// With its upper right corner at the spot and no larger than `most`: pages by their names where
/// there is room, those that are not printed dotted. Gives what it takes.
Area add_key_map(Shapes& shapes, Spot upper_right, geometry::Size most, const KeyMap& map);

}  // namespace wallwright::pages
