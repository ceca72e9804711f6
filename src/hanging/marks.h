// Pencil marks measured from one datum, never from piece to piece.
#pragma once

#include "hanging/fixings.h"

#include <string>
#include <vector>

namespace wallwright::hanging {

/// hook: where the bearing point of a hook or the head of a screw goes. corner: a top corner of the
/// frame, for strips.
enum class MarkKind { hook, corner };

struct Mark {
    int number = 0;  ///< From 1, in the order of hanging.
    wall::PieceId piece;
    MarkKind kind = MarkKind::hook;
    geometry::Point<geometry::Wall> at;
    double below_top = 0;  ///< mm from the frame's top edge down to it.
    bool assumed = false;  ///< Nobody measured where the hanger sits; below_top is the usual.
    std::string what;      ///< "left hook", "screw", "top left corner".
    double across = 0;     ///< mm from the datum's side, the wall's farthest point there.
    double up = 0;  ///< mm from the datum's height: up from the floor or down from the ceiling
                    ///< straight below or above the mark, + above a level line.
    double across_error = 0;  ///< +- mm expected.
    double up_error = 0;
    int stage = 0;  ///< In which stage of growth its piece goes up; 0 for none.
};

struct CheckMeasure {
    int from = 0;  ///< Mark numbers.
    int to = 0;
    double length = 0;  ///< mm straight between them.
};

struct MarksTable {
    wall::Datum datum;
    std::vector<Mark> marks;
    std::vector<CheckMeasure> checks;  ///< From each mark to the next.
};

/// Marks of every planned piece that has fixings (what hangs needs none), in the order of
/// hanging_order.h; a piece's own marks run left to right.
MarksTable marks_of(const wall::Project& project, const std::vector<Hanging>& hangings);

/// True when some mark is of a stage, so that not all are to be made today.
bool has_stages(const MarksTable& table);

}  // namespace wallwright::hanging
