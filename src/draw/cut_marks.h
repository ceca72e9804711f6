// The marks on the back of one board: pencil lines past the corners, cuts from cross to cross with
// their order.
#pragma once

#include "draw/easel.h"
#include "mounts/design/back_marks.h"

namespace wallwright::draw {

/// From a board's own coordinates, y down from its upper edge, to the wall's, its lower left corner
/// being the origin.
geometry::Point<geometry::Wall> on_table(geometry::Point<mounts::Back> point, double blank_height);
geometry::Rect<geometry::Wall> on_table(const geometry::Rect<mounts::Back>& place,
                                        double blank_height);

/// How far the pencil goes past the corners, in mm of the board: it ends well inside the board and
/// off the next window.
double pencil_past(const Easel& easel, const mounts::LayerMarks& layer);

/// Lines, crosses and cuts of all windows, and where the face's opening comes out as a hidden line
/// where it can be told from the cut.
void add_cut_marks(Easel& easel, const mounts::LayerMarks& layer, geometry::Size blank);

/// mm on paper inside each cut that its arrow and its number take.
inline constexpr double kArrowRoom = 5.5;

/// A small filled triangle with its tip at the point; `along` has length 1 and points the same way.
void add_arrow_head(Easel& easel, geometry::Point<geometry::Wall> tip,
                    geometry::Vec<geometry::Wall> along);

}  // namespace wallwright::draw
