// Things of many sizes in two drawers beside each other, in rows and columns, as large as they fit.
#pragma once

#include "desk/bench/match_layout.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::desk {

struct GridItem {
    std::optional<wall::PrintId> print;
    std::optional<wall::PieceId> piece;
    geometry::Size size;  ///< mm
    std::string title;
    std::string words;   ///< Under the title.
    std::string remark;  ///< Under that; may be empty.
};

/// What lies in a drawer; the rest apart, below.
struct GridSide {
    std::vector<GridItem> main;
    std::vector<GridItem> rest;
};

struct GridTask {
    GridSide left;
    GridSide right;
};

/// Columns of the right drawer are the left one's in a mirror, so that the first of both lie in one
/// row equally far from the middle. The headings of the drawers are left empty.
MatchLayout lay_out_grids(const GridTask& task, geometry::Size paper);

}  // namespace wallwright::desk
