// Pencil marks measured from one datum, never from piece to piece.
#pragma once

#include "hanging/fixings.h"

#include <string>
#include <vector>

namespace wallwright::hanging {

/// hook: where the bearing point of a hook or the head of a screw goes. corner: a top corner of the
/// frame, for strips. rail: where a rail hook sits; only across is measured.
enum class MarkKind { hook, corner, rail };

struct Mark {
    int number = 0;  ///< From 1, in the order of hanging.
    wall::PieceId piece;
    MarkKind kind = MarkKind::hook;
    geometry::Point<geometry::Wall> at;
    double below_top = 0;  ///< mm from the frame's top edge down to it.
    bool assumed = false;  ///< Nobody measured where the hanger sits; below_top is the usual.
    std::string what;      ///< "left hook", "screw", "top left corner".
    double across =
        0;            ///< mm from the datum's side, the wall's farthest point there, or from that
                      ///< edge of the datum's piece, + away from the piece; in steps of the ruler.
    double up = 0;    ///< mm from the datum's height: up from the floor or down from the ceiling
                      ///< straight below or above the mark, + above a level line or above the top
                      ///< edge of the datum's piece; in steps of the ruler. Of a rail mark the
                      ///< rail's own, which nobody measures.
    double cord = 0;  ///< mm of cord from a rail hook down to what the piece hangs by, in steps of
                      ///< the ruler; for MarkKind::rail.
    double across_error = 0;  ///< +- mm expected.
    double up_error = 0;      ///< The same, with its cord's; of a rail mark of the cord alone.
    int stage = 0;            ///< In which stage of growth its piece goes up; 0 for none.
};

struct CheckMeasure {
    int from = 0;  ///< Mark numbers.
    int to = 0;
    double length = 0;  ///< mm straight between them as they are rounded; in steps of the ruler.
};

/// What two facing neighbours will have between them, by the errors of their marks. What hangs has
/// no new error.
struct GapForecast {
    wall::PieceId first;
    wall::PieceId second;  ///< Right of, or above, `first`.
    bool across = true;    ///< The gap is measured level; else upright.
    double gap = 0;        ///< mm as the rounded marks have it.
    double spread = 0;     ///< +- mm expected.
};

/// What the last mark of the longest row would be off by, +- mm: measured from the datum, and from
/// each mark to the next (F. Scholz, Tolerance Stack Analysis Methods, Boeing 1995: n t at worst,
/// t sqrt n for independent errors).
struct ChainCompared {
    int marks = 0;  ///< In that row; the rest says nothing for fewer than three.
    double from_datum = 0;
    double chain_likely = 0;
    double chain_worst = 0;
};

struct MarksTable {
    wall::Datum datum;  ///< The floor in place of a piece without a place.
    double step = 1;    ///< mm of the ruler, to which across and up are rounded.
    std::vector<Mark> marks;
    /// Between marks of one stage: from each to the one before it, and to an earlier one that is
    /// not in line with these, so that the two fix its place.
    std::vector<CheckMeasure> checks;
    std::vector<GapForecast> gaps;
    ChainCompared chain;
    /// Marks that lie at one true height, by their numbers left to right, for a story strip: rows
    /// of two or more pieces.
    std::vector<std::vector<int>> rows;
};

/// Marks of every planned piece that has fixings (what hangs needs none), in the order of
/// hanging_order.h; a piece's own marks run left to right. Across and up are rounded together
/// (shared_rounding.h), so that gaps stay as even as the ruler allows.
MarksTable marks_of(const wall::Project& project, const std::vector<Hanging>& hangings);

/// "the floor and the left corner", "a level line 1450 mm above the floor and the right corner",
/// "the top and the left edge of Kelp": what the marks are measured from.
std::string datum_words(const wall::Project& project);
/// One sentence on how tape and pencil go from there: "Across: level, from the left corner. Up:
/// plumb, from the floor right below the mark."
std::string how_to_measure(const wall::Project& project);
/// "The floor was measured at both ends and is 12 mm lower at the right than at the left; the marks
/// follow a true level."; empty where the datum is neither floor nor ceiling, or nobody measured.
std::string slope_words(const wall::Project& project);
/// "In a row of 6 the farthest mark may be 1.4 mm off; measured from mark to mark it would likely
/// be 2.1 mm off, and 5.2 mm at worst."; empty for fewer than three marks.
std::string chain_words(const ChainCompared& chain, units::LengthUnit unit);
/// "The gaps come out at 60 to 61 mm, each to within 1.5 mm."; empty where nothing faces.
std::string gaps_words(const MarksTable& table, units::LengthUnit unit);
/// "up from the floor", "down from the ceiling", "up from the level line", "up from its top edge".
std::string up_words(wall::DatumHeight height);
/// "across from the left corner", "across from its left edge".
std::string across_words(const wall::Datum& datum);

/// The height above the floor at which a level line serves best: on the wall over its whole width
/// where that can be, within a person's reach, clear of what hangs and stands where it can be, and
/// as near to the marks as it can be; a whole number of 50 mm, or of 2 in.
double proposed_level_line(const wall::Project& project, const std::vector<Hanging>& hangings);

/// True when some mark is of a stage, so that not all are to be made today.
bool has_stages(const MarksTable& table);

}  // namespace wallwright::hanging
