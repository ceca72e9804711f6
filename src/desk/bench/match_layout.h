// Where everything lies in the view of prints and frames: the drawer of prints at the left, that of
// frames at the right, all at one scale in tidy columns with words under each, and room between.
#pragma once

#include "desk/bench/match_choice.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace wallwright::desk {

/// A print or a frame as it lies there. Coordinates are mm of the board, y up.
struct BoardItem {
    std::optional<wall::PrintId> print;  ///< One of both is there: the print itself,
    std::optional<wall::PieceId> piece;  ///< or the piece whose frame it is.
    geometry::Rect<geometry::Wall> place;
    geometry::Rect<geometry::Wall> cell;  ///< With its words, as wide as its column.
    std::vector<std::string> title;       ///< In lines.
    std::string size;                     ///< "210 × 297", of a frame what it takes.
    std::vector<std::string> remark;      ///< Why it is left over, in lines.
    std::size_t column = 0;               ///< From the room between, 0 is next to it.
    double lane = 0;                      ///< y of the free lane above its row.
};

struct Drawer {
    std::string heading;
    std::vector<BoardItem> items;
    geometry::Rect<geometry::Wall> area;
    /// Where those begin that are left over, and what stands there; without one there are none.
    std::optional<double> left_over_at;
};

/// `scale` is mm on paper for a mm of the board, at which all of it just fits. Words keep their
/// size on paper, so they have the room they need at this scale and at larger ones.
struct MatchLayout {
    Drawer prints;
    Drawer frames;
    geometry::Rect<geometry::Wall> extent;
    double scale = 1;
    [[nodiscard]] const BoardItem* find(const wall::PrintId& print) const;
    [[nodiscard]] const BoardItem* find(const wall::PieceId& piece) const;
};

/// `paper` is what there is, mm on paper. Those that match stand in the same row, large ones
/// first, so that lines between them run level; those left over stand apart. Without a match all
/// stand in the project's order.
MatchLayout lay_out_match(const wall::Project& project, const Matched* found, geometry::Size paper);

/// mm on paper.
namespace board {
inline constexpr double kWordSize = 1.8;
inline constexpr double kHeadingSize = 2.5;
inline constexpr double kLine = 3.1;      ///< From one base line to the next.
inline constexpr double kUnder = 1.4;     ///< Between a thing and its words.
inline constexpr double kLane = 5;        ///< Free above each row.
inline constexpr double kColumnGap = 7;   ///< Between columns.
inline constexpr double kPad = 4;         ///< Between a drawer's edge and what is in it.
inline constexpr double kHeading = 8;     ///< For a drawer's name.
inline constexpr double kBetween = 42;    ///< Between the drawers, at least.
inline constexpr double kNarrowest = 21;  ///< A column, so that words have room.
inline constexpr double kLegend = 6;      ///< Under both drawers.
}  // namespace board

}  // namespace wallwright::desk
