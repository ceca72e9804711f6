// Text by Pango: measured, broken into lines, painted. Sizes are heights of capitals in mm.
#pragma once

#include "pages/handles.h"

#include <string>
#include <vector>

namespace wallwright::pages {

struct Type {
    double size = 2.5;
    bool bold = false;
};

/// mm from one base line to the next.
double line_height(double size);

/// Broken into lines of at most `width` mm by the rules of the text's own language, never before a
/// fraction ("16 1/2"); a word wider than that is broken too. At least one line.
std::vector<std::string> lines_of(const std::string& text, const Type& type, double width);

/// As lines_of, but at most `most` lines, the last shortened where there would be more.
std::vector<std::string> few_lines(const std::string& text, const Type& type, double width,
                                   std::size_t most);

/// The text, or as much of it as fits into `width` mm with three dots after it.
std::string shortened(const std::string& text, const Type& type, double width);

/// Paints one line with its base line's left end at Cairo's current origin; one user unit is 1 mm.
void paint_line(cairo_t* cairo, const std::string& text, const Type& type);

}  // namespace wallwright::pages
