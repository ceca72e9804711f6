#include "rules/all.h"
#include "rules/judge.h"
#include "rules/way_clear.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

bool is_fixed(const OnWall& one) {
    return wall::is_fixed(*one.piece);
}

/// Which to move and how far, so that the wanted gap is left between them.
std::string advice(const Scene& scene, const OnWall& first, const OnWall& second) {
    if (is_fixed(first) && is_fixed(second))
        return "neither may be moved, so measure again where they hang or free one of them";
    const OnWall& moving = is_fixed(second) ? first : second;
    const OnWall& staying = is_fixed(second) ? second : first;
    const double gap = scene.project.style.gap;
    const Way way = way_clear(scene.project.room.outline, moving.place, staying.place, gap);
    return fmt::format("move {} {} {} to leave a gap of {}", title_of(moving),
                       length_text(scene, way.distance), way.direction, length_text(scene, gap));
}

void check(const Scene& scene, std::vector<Finding>& findings) {
    for (auto first = scene.pieces.begin(); first != scene.pieces.end(); ++first) {
        for (auto second = first + 1; second != scene.pieces.end(); ++second) {
            const double depth = overlap_depth(first->place, second->place);
            if (depth <= 0)
                continue;
            findings.push_back(finding(
                Severity::stop, {first->piece->id, second->piece->id},
                geometry::hull(first->place, second->place), Measure{depth, 0},
                fmt::format("{} and {} overlap by {}; {}.", title_of(*first), title_of(*second),
                            length_text(scene, depth), advice(scene, *first, *second))));
        }
    }
}

}  // namespace

const Rule kNoOverlap{
    "no-overlap",
    "no two pieces overlap",
    "plain geometry",
    check,
};

}  // namespace wallwright::rules
