// The wall as an architect would draw it.
#pragma once

#include "draw/drawing.h"
#include "rules/assess.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace wallwright::draw {

/// A stage of growth: its number, from 1, and that of the last.
struct StageShown {
    int number = 1;
    int last = 1;
};

struct ElevationOptions {
    double scale = 0.05;  ///< mm on paper for one mm of wall: 0.05 is 1:20. Labels are kept apart
                          ///< for this scale.
    bool dimensions = true;  ///< Chains of gaps, heights, widths, the centre line.
    bool fixings = true;     ///< Strips, hooks, cords and what hangs from a rail as hidden lines.
    bool marks = true;       ///< As crosses with their numbers.
    bool zones = true;       ///< Cable zones hatched.
    bool studs = true;       ///< Where they should be, as hidden lines with their centres.
    bool loads = false;      ///< On each piece a bar: how much of its fixings' rating is in use.
    bool waiting = true;  ///< Waiting pieces stand in a band of floor below the wall, at its scale.
    bool letters = true;  ///< Each piece with its letter (draw/letters.h).
    bool pictures = true;             ///< The prints' own pictures; otherwise flat colour.
    std::string picture_folder;       ///< Where the prints' file names start from.
    std::optional<StageShown> stage;  ///< Pieces that it adds stand out, and a label says it.
};

/// Wall, skirting, floor, furniture, fixtures, pieces with moulding, mount, bevel and picture or,
/// where they are not bought yet, in dashes; then what the options ask. The wall's colour is a thin
/// wash, so that figures can be read on any. All lengths are labelled in the project's unit.
WallDrawing elevation(const wall::Project& project, const rules::Assessment& assessment,
                      const ElevationOptions& options);

/// Where the waiting pieces stand in that elevation; none when the options leave them out.
std::vector<std::pair<wall::PieceId, geometry::Rect<geometry::Wall>>> waiting_places(
    const wall::Project& project, const rules::Assessment& assessment,
    const ElevationOptions& options);

/// One group alone at a larger scale: its pieces with letters, marks, fixings and gaps, its own
/// width and height.
WallDrawing group_detail(const wall::Project& project, const rules::Assessment& assessment,
                         const ElevationOptions& options, const spacing::Group& group);

/// The waiting pieces alone, for a page that has room for them somewhere else: in rows at most
/// `width` mm wide, unless one piece is wider, each row on a floor line of its own and the last on
/// y = 0.
WallDrawing waiting_pieces(const wall::Project& project, const ElevationOptions& options,
                           double width);

}  // namespace wallwright::draw
