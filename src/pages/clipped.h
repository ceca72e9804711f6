// A drawing cut off at the edges of an area, for what runs over several sheets.
#pragma once

#include "pages/sheet.h"

namespace wallwright::pages {

/// Straight lines end at the area's edge. Fills, curves, texts and pictures are kept where they lie
/// wholly inside; an outline that does not loses its fill.
Shapes clipped(const Shapes& shapes, const Area& area);

}  // namespace wallwright::pages
