#include "draw/stage_shown.h"

#include "draw/dimensions.h"
#include "draw/paths.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;

constexpr double kReach = 1.3;      // mm on paper from a frame to its outline
constexpr double kGapShare = 0.36;  // of a gap that an outline takes at most
constexpr double kRadius = 0.9;     // mm on paper
constexpr double kGround = 0.18;    // how much of the wall its ground covers
constexpr double kAir = 2;          // mm on paper from the wall's edge to the label

}  // namespace

void add_stage_outlines(Board& board) {
    if (!board.options.stage)
        return;
    const double reach =
        std::min(board.on_wall(kReach), kGapShare * std::max(0.0, board.project.style.gap));
    const Stroke stroke{{Ink::accent}, 0.35};
    for (const wall::Piece& piece : board.project.pieces) {
        const auto place = wall::place_of(board.project, piece);
        if (!place || piece.state != wall::PieceState::planned ||
            piece.stage != board.options.stage->number)
            continue;
        Look look{Paint{Ink::accent, {}, kGround}, stroke};
        if (piece.wished)
            look.fill.reset();  // The wall is seen through what is not bought yet.
        board.add(rounded_box(place->grown(reach), board.on_wall(kRadius), look));
    }
}

void add_stage_label(Board& board) {
    if (!board.options.stage)
        return;
    constexpr double kStep = 8;  // mm on paper
    Text<Wall> label = label_on(
        board, {},
        fmt::format("stage {} of {}", board.options.stage->number, board.options.stage->last),
        Align::left);
    label.size = kFigureSize;
    label.bold = true;
    label.paint.ink = Ink::accent;
    const Rect<Wall> inner = board.wall.grown(-board.on_wall(kAir));
    for (double y = inner.max.y - board.on_wall(kFigureSize); y > inner.min.y;
         y -= board.on_wall(kStep))
        for (double x = inner.min.x; x < inner.max.x; x += board.on_wall(kStep)) {
            label.at = {x, y};
            if (board.add_first_free({&label, 1}))
                return;
        }
}

}  // namespace wallwright::draw
