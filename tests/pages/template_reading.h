// Templates read back from their PDF and put together as a person would.
#pragma once

#include "pages/looking.h"
#include "pages/pdf_lines.h"
#include "pages/sheets.h"

#include <map>
#include <string>
#include <vector>

namespace wallwright::test {

using pages::Area;
using pages::Spot;

inline constexpr pages::Paper kPapers[] = {pages::Paper::a4, pages::Paper::letter,
                                           pages::Paper::a3};
inline constexpr double kExact = 0.05;  // mm

/// One of each hanger, one of them turned, one of odd inches; one piece hangs.
wall::Project wall_to_hang();
rules::Assessment assessed(const wall::Project& project);
std::vector<draw::PageDrawing> templates(const wall::Project& project, pages::TemplateKind kind,
                                         pages::Paper paper);
/// Words of all sheets, lines joined, so that broken sentences are found.
std::string running_text(const std::vector<draw::PageDrawing>& sheets);

bool level(const PdfLine& line);
std::vector<PdfLine> of_width(const std::vector<PdfLine>& lines, double width);
Area bounds_of(const std::vector<PdfLine>& lines);
/// Where level and upright lines of this stroke cross, both at most `reach` long.
std::vector<Spot> crosses_in(const std::vector<PdfLine>& lines, const draw::Stroke& stroke,
                             double reach);
/// True when the lines between them cover the straight way without a hole.
bool cover(const std::vector<PdfLine>& lines, Spot from, Spot to);
bool has_spot(const std::vector<Spot>& spots, Spot wanted);

/// All strokes of the pages of one tiling, laid on each other at their join marks as these stand in
/// the PDF. Fails the test where the two marks of a join, or two ways round, do not agree.
std::vector<PdfLine> taped(const std::vector<draw::PageDrawing>& sheets);

}  // namespace wallwright::test
