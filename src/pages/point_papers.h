// Small papers for the fixing points of pieces alone.
#pragma once

#include "pages/sheet.h"
#include "pages/true_drawing.h"

#include <string>
#include <vector>

namespace wallwright::pages {

/// Several to a page with lines to cut along; where a paper's edge is the frame's it says so.
/// `before` is said at the head of the first page.
/// What the head of these pages says besides how to lay them.
struct PointNotes {
    std::string before = {};  ///< On the first page only; ends in a space.
    std::string stop = {};    ///< With its sign.
    std::string seats = {};   ///< Worked out from the pieces.
};

std::vector<draw::PageDrawing> point_pages(const wall::Project& project,
                                           const std::vector<TrueDrawing>& pieces, Paper paper,
                                           PointNotes notes);

/// What of a piece its papers show, no paper larger than `most`: about each fixing, out to the
/// frame's nearest edges where these are near. Fixings close to each other share a paper.
std::vector<geometry::Rect<geometry::Wall>> point_papers(const TrueDrawing& piece,
                                                         geometry::Size most);

}  // namespace wallwright::pages
