#include "rules/all.h"
#include "rules/judge.h"
#include "rules/way_clear.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

std::string advice(const Scene& scene, const geometry::Rect<geometry::Wall>& place) {
    if (const std::optional<Way> way = way_inside(scene.project.room.outline, place))
        return fmt::format("move it {} {} to bring it in", length_text(scene, way->distance),
                           way->direction);
    return "it needs another place";
}

/// A hook on the rail goes along with it aside alone.
std::string advice(const Scene& scene, const hanging::Fixing& fixing) {
    if (fixing.kind == wall::FixingKind::rail_hook)
        return "the rail cannot be there: look at its height, move the piece aside, or hang it "
               "without the rail";
    return advice(scene, hanging::covered_by(fixing));
}

/// A frame may be inside by a hair and the plate of its hook not.
void check_fixings(const Scene& scene, const OnWall& one, std::vector<Finding>& findings) {
    for (const hanging::Fixing& fixing : one.hanging->fixings) {
        const double outside =
            geometry::protrusion(scene.project.room.outline, hanging::covered_by(fixing));
        if (!exceeds(outside, 0))
            continue;
        findings.push_back(finding(
            Severity::stop, {one.piece->id}, hanging::covered_by(fixing), Measure{outside, 0},
            fmt::format("{} is inside the wall, but its {} reaches {} outside; {}.", title_of(one),
                        word_for(fixing.kind), length_text(scene, outside),
                        advice(scene, fixing))));
        return;
    }
}

void check(const Scene& scene, std::vector<Finding>& findings) {
    for (const OnWall& one : scene.pieces) {
        const double outside = geometry::protrusion(scene.project.room.outline, one.place);
        if (!exceeds(outside, 0)) {
            check_fixings(scene, one, findings);
            continue;
        }
        findings.push_back(
            finding(Severity::stop, {one.piece->id}, one.place, Measure{outside, 0},
                    fmt::format("{} reaches {} outside the wall; {}.", title_of(one),
                                length_text(scene, outside), advice(scene, one.place))));
    }
}

}  // namespace

const Rule kInsideWall{
    "inside-wall",
    "every piece is inside the outline of the wall, and so is what it hangs by",
    "plain geometry",
    check,
};

}  // namespace wallwright::rules
