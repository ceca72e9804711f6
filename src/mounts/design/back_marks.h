// The marks of a mount as one makes them: on the back of each board, mirrored left to right.
#pragma once

#include "mounts/design/mount_design.h"

#include <array>
#include <vector>

namespace wallwright::mounts {

/// mm on a blank seen from the back: x right from its left edge as it lies there, y down from its
/// top edge.
struct Back {
    static constexpr bool kUpward = false;
};

/// Turns a blank of this width over about its upright middle; twice is where it was.
Rect<Back> mirrored(const Rect<Front>& place, double blank_width);
Rect<Front> mirrored(const Rect<Back>& place, double blank_width);

/// From the corner cross where the knife goes in to the one where it comes out.
struct Cut {
    geometry::Point<Back> from;
    geometry::Point<Back> to;
    bool operator==(const Cut&) const = default;
};

struct WindowMarks {
    wall::PrintId print;
    /// The four lines to draw and cut along: the opening at the board's back, which for a bevel is
    /// the smaller one.
    Rect<Back> line;
    /// mm from each of the blank's own edges to the line nearest to it, left and right as seen from
    /// the back.
    Borders from_edges;
    std::array<geometry::Point<Back>, 4> crosses;  ///< From the upper left one, clockwise.
    std::array<Cut, 4> cuts;                       ///< Each ends where the next begins.
    double diagonal = 0;  ///< mm from cross to cross; both are the same when it is square.
    bool operator==(const WindowMarks&) const = default;
};

struct LayerMarks {
    double diagonal = 0;  ///< mm of the blank; both are the same when it is square.
    double bevel = 0;     ///< mm by which the opening at the face is larger than the line, on each
                          ///< side; 0 for a straight cut.
    std::vector<WindowMarks> windows;
    bool operator==(const LayerMarks&) const = default;
};

/// Where a print is fixed to the backing board, which one sees from the front while doing it; a
/// floating print is fixed to its card the same way.
struct Hinging {
    wall::PrintId print;
    Rect<Front> place;     ///< Of the sheet, from the board's left and top edge.
    double from_side = 0;  ///< mm from each upper corner of the sheet to the middle of its hinge.
    bool operator==(const Hinging&) const = default;
};

struct BackMarks {
    geometry::Size blank;
    std::vector<LayerMarks> layers;  ///< From the top one.
    std::vector<Hinging> hinges;
    bool operator==(const BackMarks&) const = default;
};

BackMarks back_marks(const MountDesign& design);

}  // namespace wallwright::mounts
