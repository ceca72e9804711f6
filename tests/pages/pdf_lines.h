// Straight strokes as they stand in a PDF, read back by a way of their own.
#pragma once

#include "geometry/rect.h"
#include "wall/colour.h"

#include <string>
#include <vector>

namespace wallwright::test {

/// In mm from the page's upper left corner.
struct PdfLine {
    geometry::Point<geometry::Page> from;
    geometry::Point<geometry::Page> to;
    double width = 0;    ///< mm
    std::string colour;  ///< Shares of red, green and blue: "0.04 0.34 0.36".
};

/// As PdfLine has it.
std::string pdf_colour(wall::Colour colour);

/// The straight strokes of each page in order. qpdf lays the pages' own operators open (ISO
/// 32000-1: m, l, h, re, S, cm, w, RG, G, q, Q); what they measure, the printer prints.
std::vector<std::vector<PdfLine>> lines_in_pdf(const std::string& bytes);

}  // namespace wallwright::test
