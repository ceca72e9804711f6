#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::rules {

namespace {

constexpr double kTapeLength = 5000;  ///< mm

/// What there is to do about it. From a piece, the corners may be nearer.
std::string_view remedy(const Scene& scene, double farthest) {
    if (wall::datum_place(scene.project))
        return "measure from a piece or a corner that is nearer";
    const double width = geometry::bounds(scene.project.room.outline).width();
    double there = 0;
    for (const hanging::Mark& mark : scene.marks)
        there = std::max(there, width - mark.across);
    return there < farthest ? "measure from the other corner"
                            : "use a longer one, or a plumb line on the way measured twice";
}

std::string_view end_word(const Scene& scene) {
    return wall::datum_place(scene.project) ? "edge of the piece that marks are measured from"
                                            : "corner";
}

void check(const Scene& scene, std::vector<wall::Finding>& findings) {
    double farthest = 0;
    std::vector<const OnWall*> far;
    for (const hanging::Mark& mark : scene.marks) {
        const double across = std::abs(mark.across);
        farthest = std::max(farthest, across);
        const OnWall* one = &on_wall(scene, mark.piece);
        if (exceeds(across, kTapeLength) && std::ranges::find(far, one) == far.end())
            far.push_back(one);
    }
    if (far.empty())
        return;
    findings.push_back(finding(
        wall::Severity::note, ids_of(far), bounds_of(far), Measure{farthest, kTapeLength},
        fmt::format("{} {} up to {} from the {} {}, farther than a tape of {} reaches; {}.",
                    titles_of(far), far.size() == 1 ? "lies" : "lie", length_text(scene, farthest),
                    wall::name_of(scene.project.datum.side), end_word(scene),
                    length_text(scene, kTapeLength), remedy(scene, farthest))));
}

}  // namespace

const Rule kTapeReach{
    "tape-reach",
    "marks lie within the reach of a household tape",
    "tapes of 3 and 5 m are the usual ones: common practice, no source",
    check,
};

}  // namespace wallwright::rules
