// Drawings to bytes of a file: PDF, SVG, PNG, by Cairo, with text by Pango.
#pragma once

#include "base/problem.h"
#include "draw/drawing.h"

#include <string>
#include <vector>

namespace wallwright::pages {

/// A PDF with one page a drawing, each the size of its drawing's extent, at true scale: 1 mm is
/// 72/25.4 points. The creation date is left out so that the same input gives the same bytes.
std::string to_pdf(const std::vector<draw::PageDrawing>& pages, const std::string& title);
/// One SVG of the drawing's extent at true size, in points of 25.4/72 mm.
std::string to_svg(const draw::PageDrawing& page);
/// A PNG, `pixels_per_mm` fine. Larger than 30 megapixels is a Problem.
Result<std::string> to_png(const draw::PageDrawing& page, double pixels_per_mm);

/// The width of a text as painted, mm: for layout.
double text_width(const std::string& text, double size, bool bold);

}  // namespace wallwright::pages
