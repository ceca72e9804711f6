#include "arrange/even_wall.h"

#include "edits/edit.h"
#include "spacing/group.h"

#include <algorithm>
#include <cmath>

namespace wallwright::arrange {

namespace {

/// What a file keeps; rounding here makes the written wall the evened one.
double to_paper_step(double mm) {
    return std::round(mm * 100) / 100;
}

}  // namespace

Result<EvenedWall> even_wall(const wall::Project& project) {
    const std::vector<wall::Placed> before = wall::placed_pieces(project);
    spacing::EvenOptions options;
    options.gap = project.style.gap;
    options.align_within = project.style.align_within;
    options.reach = spacing::group_reach(project.style.gap);
    EvenedWall evened;
    evened.result = spacing::even(before, keep_outs(project.room), options);
    std::vector<edits::Move> moves;
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (before[i].fixed)
            continue;
        const geometry::Point<geometry::Wall> to = evened.result.pieces[i].place.min;
        const double way = geometry::distance(before[i].place.min, to);
        evened.farthest = std::max(evened.farthest, way);
        evened.moved += way > 0.01 ? 1 : 0;
        moves.push_back({before[i].id, {to_paper_step(to.x), to_paper_step(to.y)}});
    }
    auto placed = edits::place(project, moves);
    if (!placed)
        return fail(std::move(placed.error()));
    evened.project = std::move(*placed);
    return evened;
}

}  // namespace wallwright::arrange
