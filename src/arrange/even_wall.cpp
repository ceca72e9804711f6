#include "arrange/even_wall.h"

#include "edits/edit.h"
#include "spacing/group.h"

#include <algorithm>
#include <cmath>

namespace wallwright::arrange {

namespace {

/// What a file keeps of a mm. Rounding here makes the written wall the evened one.
constexpr double kStepsPerMm = 100;

double to_file_step(double mm) {
    return std::round(mm * kStepsPerMm) / kStepsPerMm;
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
        const geometry::Point<geometry::Wall> from = before[i].place.min;
        const geometry::Point<geometry::Wall> to = evened.result.pieces[i].place.min;
        const double way = geometry::distance(from, to);
        evened.farthest = std::max(evened.farthest, way);
        if (way > 1 / kStepsPerMm)
            evened.moved.push_back({before[i].id, {to.x - from.x, to.y - from.y}});
        moves.push_back({before[i].id, {to_file_step(to.x), to_file_step(to.y)}});
    }
    auto placed = edits::place(project, moves);
    if (!placed)
        return fail(std::move(placed.error()));
    evened.project = std::move(*placed);
    return evened;
}

}  // namespace wallwright::arrange
