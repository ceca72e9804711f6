#include "draw/off_level.h"

#include "draw/paths.h"
#include "hanging/outline_edges.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::draw {

namespace {

using geometry::Segment;
using geometry::Wall;

constexpr double kLeastRise = 0.5;  // mm

/// One of the two, and how much higher it is at the right end than the outline has it.
struct Run {
    std::vector<Segment<Wall>> sides;
    double rise = 0;
    const char* name = "";
    double label_off = 0;  // mm on paper from the outline to the base line of its words
};

void add_run(Board& board, const Run& run) {
    if (std::abs(run.rise) < kLeastRise || run.sides.empty())
        return;
    const auto moved = [&](Point<Wall> point) {
        const double share = (point.x - board.wall.left()) / board.wall.width();
        return Point<Wall>{point.x, point.y + share * run.rise};
    };
    const Segment<Wall>* last = &run.sides.front();
    for (const Segment<Wall>& side : run.sides) {
        board.add(line(moved(side.from), moved(side.to), Stroke{{Ink::mark}, 0.18}));
        if (side.to.x > last->to.x)
            last = &side;
    }
    const std::string words =
        fmt::format("{} {} {} at this end", run.name, board.figure(std::abs(run.rise)),
                    run.rise > 0 ? "higher" : "lower");
    constexpr double kSteps[] = {1, 8, 16, 24, 40, 60};
    for (const double back : kSteps) {
        Text<Wall> label = label_on(
            board, {last->to.x - board.on_wall(back), last->to.y + board.on_wall(run.label_off)},
            words, Align::right);
        label.paint.ink = Ink::mark;
        if (board.add_first_free({&label, 1}))
            return;
    }
}

}  // namespace

void add_off_level(Board& board) {
    const hanging::OutlineEdges edges = hanging::edges_of(board.project.room.outline);
    const wall::Datum& datum = board.project.datum;
    if (datum.floor)
        add_run(board, {edges.floor, datum.floor->left - datum.floor->right, "floor", 1.2});
    if (datum.ceiling)
        add_run(board,
                {edges.ceiling, datum.ceiling->right - datum.ceiling->left, "ceiling", -3.2});
}

}  // namespace wallwright::draw
