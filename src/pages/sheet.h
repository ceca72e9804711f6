// What all sheets share: margins, the title block with its fields, the bars to check the printer
// by, the sheet's number.
#pragma once

#include "draw/drawing.h"
#include "pages/paper.h"
#include "pages/typesetting.h"
#include "wall/project.h"
#include "wall/titles.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::pages {

using Shapes = std::vector<draw::Shape<geometry::Page>>;
using Spot = geometry::Point<geometry::Page>;
using Area = geometry::Rect<geometry::Page>;

/// One entry of the title block.
struct Field {
    std::string name;
    std::string value;
};

struct SheetStyle {
    Paper paper = Paper::a4;
    bool landscape = false;
    std::string project_title;
    std::string name;  ///< Of this sheet: "Measured elevation".
    std::vector<Field> fields;
    std::optional<geometry::Size> size = {};  ///< mm, in place of the paper's.
};

/// The sheet with its title block and bars, nothing else yet.
draw::PageDrawing blank_sheet(const SheetStyle& style);
/// Inside the margins and above the title block.
Area content_of(const SheetStyle& style);
/// "2 of 5" into the title block of each.
void number_sheets(std::vector<draw::PageDrawing>& sheets);

/// One line of text.
draw::Text<geometry::Page> text_at(Spot at, std::string words, const Type& type,
                                   draw::Ink ink = draw::Ink::text);
draw::Text<geometry::Page> aligned(draw::Text<geometry::Page> text, draw::Align align);

}  // namespace wallwright::pages
