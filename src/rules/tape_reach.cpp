#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::rules {

namespace {

constexpr double kTapeLength = 5000;  ///< mm

/// From the other end of the wall.
double across_from_other_end(const Scene& scene, const hanging::Mark& mark) {
    return geometry::bounds(scene.project.room.outline).width() - mark.across;
}

void check(const Scene& scene, std::vector<wall::Finding>& findings) {
    double here = 0;
    double there = 0;
    std::vector<const OnWall*> far;
    for (const hanging::Mark& mark : scene.marks) {
        here = std::max(here, mark.across);
        there = std::max(there, across_from_other_end(scene, mark));
        const OnWall* one = &on_wall(scene, mark.piece);
        if (exceeds(mark.across, kTapeLength) && std::ranges::find(far, one) == far.end())
            far.push_back(one);
    }
    if (far.empty())
        return;
    const std::string_view side = wall::name_of(scene.project.datum.side);
    findings.push_back(finding(
        wall::Severity::note, ids_of(far), bounds_of(far), Measure{here, kTapeLength},
        fmt::format("{} {} up to {} from the {} corner, farther than a tape of {} reaches; {}.",
                    titles_of(far), far.size() == 1 ? "lies" : "lie", length_text(scene, here),
                    side, length_text(scene, kTapeLength),
                    there < here ? "measure from the other corner"
                                 : "use a longer one, or a plumb line on the way measured twice")));
}

}  // namespace

const Rule kTapeReach{
    "tape-reach",
    "marks lie within the reach of a household tape",
    "tapes of 3 and 5 m are the usual ones: common practice, no source",
    check,
};

}  // namespace wallwright::rules
