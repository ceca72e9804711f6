// A drawing in wall millimetres to the window: the same shapes that the pages paint.
#pragma once

#include "app/fonts.h"
#include "app/host.h"
#include "draw/drawing.h"
#include "geometry/transform.h"

#include <span>
#include <string>

namespace wallwright::app {

/// At a text scale of 1: figures of 2.5 mm on paper are 10 px high.
inline constexpr double kPixelsPerPaperMm = 4;

struct CanvasStyle {
    geometry::Transform<geometry::Wall, geometry::Screen> to_screen;
    double pixels_per_paper_mm = 4;  ///< For widths of lines, sizes of text, spacing of hatches.
    bool dark = false;
    Fonts fonts;
    Host* host = nullptr;  ///< For pictures; null paints what stands in for them.
    /// A sheet of paper: letters and lines keep their true size however small, letters that could
    /// not be read are bars.
    bool on_paper = false;
};

/// Paints the shapes in order, leaving out what lies outside `clip`.
void paint(ImDrawList& list, std::span<const draw::Shape<geometry::Wall>> shapes,
           const CanvasStyle& style, const ImVec4& clip);

}  // namespace wallwright::app
