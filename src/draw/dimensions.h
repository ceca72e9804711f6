// Dimension lines by ISO 129-1: thin lines, oblique strokes where they end, figures above the line,
// extension lines that start a little off what they measure.
#pragma once

#include "draw/easel.h"
#include "spacing/facing.h"

#include <string>
#include <vector>

namespace wallwright::draw {

/// One end of a measured distance: where it is along the line, and from where across it its
/// extension line comes.
struct Stop {
    double at = 0;
    double feature = 0;
};

/// Distances one after the other on one straight line; `line` is its y when it runs horizontally
/// and its x when it stands.
struct Chain {
    spacing::Axis axis = spacing::Axis::horizontal;
    double line = 0;
    std::vector<Stop> stops;
    bool crosswise = false;  ///< Figures without any other room may read across the line.
};

inline constexpr double kFigureSize = 2.5;       ///< mm on paper, of chains outside the wall.
inline constexpr double kSmallFigureSize = 1.8;  ///< mm on paper, of single dimensions on the wall.
inline constexpr double kFigureGap = 0.8;        ///< mm on paper from the line to the figure.

/// Draws all lines first and then a figure for each distance: between its ends, beyond them or
/// lifted where it is too short. A figure for which there is no room is left out. Stops may come in
/// any order; those in one place count once.
void add_chains(Easel& easel, std::vector<Chain> chains);

/// A dimension line alone, with its strokes but without figure or extension lines.
void add_dimension_line(Easel& easel, spacing::Axis axis, double line, double from, double to,
                        const Paint& paint = {Ink::dimension});

/// A thin line from `from` to just past `to`.
void add_extension(Easel& easel, geometry::Point<geometry::Wall> from,
                   geometry::Point<geometry::Wall> to);

}  // namespace wallwright::draw
