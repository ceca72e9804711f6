// What the sheets with elevations share.
#pragma once

#include "draw/elevation.h"
#include "pages/sheets.h"
#include "pages/standard_scale.h"

namespace wallwright::pages {

/// What they are made from.
struct ElevationJob {
    const wall::Project& project;
    const rules::Assessment& assessment;
    const SheetOptions& options;
};

/// Title block with the drawing's name, its scale, and what is measured from where.
SheetStyle elevation_style(const ElevationJob& job, const std::string& drawing_name,
                           double denominator);

/// Everything shown, for a scale; the waiting pieces below the wall or not at all.
draw::ElevationOptions drawing_options(const ElevationJob& job, double denominator, bool waiting);

/// Landscape, above the line with the legend and under the one that names pieces with a stop.
Area elevation_area(const ElevationJob& job);
/// A sheet with the legend at its foot and the drawing where the transform puts it.
draw::PageDrawing elevation_sheet(
    const ElevationJob& job, const std::string& drawing_name, const Scaled& scaled,
    const geometry::Transform<geometry::Wall, geometry::Page>& to_page);

}  // namespace wallwright::pages
