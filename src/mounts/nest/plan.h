// Which blank comes from where on which sheet, and the cuts that bring it out.
#pragma once

#include "mounts/nest/task.h"

#include <vector>

namespace wallwright::mounts {

/// A rectangle on a sheet: mm from the sheet's left and top edge.
struct OnSheet {
    double left = 0;
    double top = 0;
    geometry::Size size;
    bool operator==(const OnSheet&) const = default;
};

struct PlacedBlank {
    std::size_t blank = 0;  ///< Index in the task.
    OnSheet place;          ///< Its size as it lies.
    bool turned = false;
    bool operator==(const PlacedBlank&) const = default;
};

/// One straight cut from edge to edge of the piece in hand.
struct SheetCut {
    int number = 0;        ///< From 1, through the whole plan.
    OnSheet piece;         ///< In hand: the sheet, or what an earlier cut left of it.
    bool upright = false;  ///< Runs from top to bottom; otherwise from left to right.
    double at = 0;         ///< mm from the sheet's left edge; from its top edge when not upright.
    bool operator==(const SheetCut&) const = default;
};

struct CutSheet {
    std::size_t sheet = 0;            ///< Index of its kind in the task.
    std::vector<PlacedBlank> placed;  ///< Row by row from the top left.
    std::vector<SheetCut> cuts;       ///< In order. The first ones take off the margin.
    std::vector<OnSheet> offcuts;     ///< What is left inside the margin, the largest first.
    bool operator==(const CutSheet&) const = default;
};

struct NestPlan {
    std::vector<CutSheet> sheets;  ///< A drop-out comes after the sheet its blank is cut from.
    std::vector<std::size_t>
        left_out;           ///< Blanks too large for every sheet, or one sheet too many.
    std::size_t count = 0;  ///< Sheets used, without drop-outs.
    double waste_area = 0;  ///< mm2 of these sheets that become no blank.
    double waste = 0;       ///< The same as a share of them, 0 to 1.
    std::size_t bound = 0;  ///< No plan of all blanks that fit a sheet has fewer sheets than this.
    bool proved = false;    ///< Nothing that fits a sheet is left out, and `count` is the bound.
    bool operator==(const NestPlan&) const = default;
};

/// mm2 of the largest single offcut; 0 where there is none.
double largest_offcut(const NestPlan& plan);

}  // namespace wallwright::mounts
