// A drawing at true size on as many pages as it takes, to be joined at their join marks.
#pragma once

#include "pages/tiling.h"
#include "pages/true_page.h"
#include "wall/project.h"

namespace wallwright::pages {

inline constexpr double kTileOverlap = 10;  ///< mm that two pages both show.

struct TilePlan {
    SheetStyle style;  ///< Of every page.
    Tiling tiling;
    std::vector<TileIndex> printed;
};

/// Upright or across, whichever takes fewer pages.
TilePlan tile_plan(const wall::Project& project, const TrueDrawing& drawing, Paper paper);

/// On pages of their own size, one unless a side is longer than `longest` mm.
TilePlan large_plan(const wall::Project& project, const TrueDrawing& drawing, double longest);

/// Each with the head, its place in the tiling on a small map, and marks where neighbours meet.
std::vector<draw::PageDrawing> tile_pages(const TrueDrawing& drawing, const TilePlan& plan);

}  // namespace wallwright::pages
