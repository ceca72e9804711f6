// Pieces at true size as seen from the front, with what a person needs to mark the wall through
// paper.
#pragma once

#include "draw/drawing.h"
#include "rules/assess.h"

#include <string>
#include <vector>

namespace wallwright::pages {

/// Words beside a point, found a place for on each page that shows it.
struct Tag {
    geometry::Point<geometry::Wall> at;
    double clear = 0;                ///< mm about the point that stay free.
    std::string number;              ///< Of a mark, in large figures; may be empty.
    std::vector<std::string> lines;  ///< Small, beside the number.
};

/// A line to hold a level to; its words may stand between two places along it.
struct LevelLine {
    double height = 0;
    double from = 0;
    double to = 0;
    std::string words;  ///< "level".
};

struct TrueDrawing {
    std::string heading;                                    ///< "B  Kelp, 420 x 620 mm".
    std::string name;                                       ///< "B Kelp", for the title block.
    std::vector<geometry::Rect<geometry::Wall>> places;     ///< Of the planned pieces in it.
    std::vector<geometry::Rect<geometry::Wall>> hung = {};  ///< Of what hangs already.
    geometry::Rect<geometry::Wall> whole;                   ///< Around all of its lines.
    std::vector<geometry::Rect<geometry::Wall>> points;     ///< Each mark and fixing.
    std::vector<LevelLine> levels;
    std::vector<Tag> tags;
    draw::WallDrawing lines;  ///< Without words.
    std::string how;          ///< What to do with the paper at its points, a sentence or two.
    std::string seat = {};    ///< How the fixing sits on its mark; empty for strips.
    std::string minus = {};   ///< What a minus means, where a figure on it has one.
    std::string stop = {};    ///< "Stop: cables may run here"; empty where nothing stops it.
};

/// How the fixings of these sit on their marks, each kind once, and what a minus means; sentences
/// with a space before them.
std::string seats_of(const std::vector<TrueDrawing>& pieces);

/// Of each planned piece that has marks, in the order of hanging. A rail hook itself is not on it,
/// only where its cord comes to the frame.
std::vector<TrueDrawing> true_pieces(const wall::Project& project,
                                     const rules::Assessment& assessment);

/// All of them, and what hangs already in thin lines.
TrueDrawing true_group(const wall::Project& project, const std::vector<TrueDrawing>& pieces);

/// The outline of a piece, the only lines of this stroke.
inline const draw::Stroke kOutlineStroke{{draw::Ink::outline}, 0.5};
/// The crosses of marks, the only lines of this stroke.
inline const draw::Stroke kMarkStroke{{draw::Ink::mark}, 0.25};
inline const draw::Stroke kLevelStroke{{draw::Ink::accent}, 0.25, draw::LineType::long_dash_dotted};

/// "1312 mm across from the left corner" and "1369 mm up from the floor", as the table of marks has
/// it.
std::vector<std::string> places_of(const wall::Project& project, const hanging::Mark& mark);

}  // namespace wallwright::pages
