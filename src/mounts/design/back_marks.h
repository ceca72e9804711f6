// The marks of a mount as one makes them: on the back of each board, mirrored left to right.
#pragma once

#include "mounts/design/mount_design.h"

#include <array>
#include <string>
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
    /// Where it comes out at the face: the line and the bevel.
    Rect<Back> face;
    std::array<geometry::Point<Back>, 4> crosses;  ///< From the upper left one, clockwise.
    std::array<Cut, 4> cuts;                       ///< Each ends where the next begins.
    double diagonal = 0;  ///< mm from cross to cross; both are the same when it is square.
    bool operator==(const WindowMarks&) const = default;
};

struct LayerMarks {
    double diagonal = 0;  ///< mm of the blank; both are the same when it is square.
    double bevel = 0;     ///< mm by which the opening at the face is larger than the line, on each
                          ///< side; 0 for a straight cut.
    double reveal = 0;    ///< mm by which its windows come out smaller than those of the layer in
                          ///< front, face to face; 0 for the top one.
    double shown = 0;     ///< mm of it that show its colour, beside the bevel of that layer.
    std::vector<WindowMarks> windows;
    bool operator==(const LayerMarks&) const = default;
};

/// Where a print is fixed to the undermount, a board of the blank's size, which one sees from the
/// front while doing it; a floating print is fixed to its card the same way.
struct Hinging {
    wall::PrintId print;
    Rect<Front> place;     ///< Of the sheet, from the board's left and top edge.
    Borders covered;       ///< mm of it behind the lowest layer's face; 0 where it floats.
    double from_side = 0;  ///< mm from each upper corner of the sheet to the middle of its hinge.
    bool operator==(const Hinging&) const = default;
};

struct BackMarks {
    geometry::Size blank;
    std::vector<LayerMarks> layers;  ///< From the top one.
    std::vector<Hinging> hinges;
    Borders cut;   ///< As seen from the front, like those of the design.
    Borders lip;   ///< What of these the frame's lip covers,
    Borders seen;  ///< and what it leaves.
    bool operator==(const BackMarks&) const = default;
};

/// As a person marks them with a rule of this step, or exact where it is 0.
///
/// The blank is taken down to the step, as design_of() has done already. The lines of the lowest
/// layer, which touches the print, are rounded each from the edge of the blank that is nearest to
/// it by name: left from left, right from right; windows of one size get the least of what that
/// makes of them. The layers in front of it stand off by one rounded distance on all sides. All
/// else follows from these, so that left + width + right are the blank exactly, equal borders and
/// windows stay equal and reveals even.
///
/// What that does: the overlap behind the window loses half a step on each side at most. A border
/// gains or loses as much, and as much again where the reveals are no whole steps. The print is
/// hung in the middle of its window to the step, which moves it by half a step at most.
BackMarks back_marks(const MountDesign& design, double step = 0);

/// "a", "b": what a window, or a print that floats, is called among several.
std::string letter_of(std::size_t index);

}  // namespace wallwright::mounts
