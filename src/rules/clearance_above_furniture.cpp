#include "rules/above_furniture.h"
#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

void report(const Scene& scene, const Above& above, double bound, std::vector<Finding>& findings) {
    const wall::HangingStyle& style = scene.project.style;
    const bool low = above.clearance < bound;
    findings.push_back(finding(
        Severity::mind, above.group->pieces, above.lowest->place, Measure{above.clearance, bound},
        fmt::format("{} hangs {} above {}, {} the usual {}; {} {} by {}.", title_of(*above.lowest),
                    length_text(scene, above.clearance), title_of(*above.furniture),
                    low ? "under" : "over",
                    range_text(scene, style.clearance_least, style.clearance_most),
                    low ? "raise" : "lower", above.group->pieces.size() == 1 ? "it" : "its group",
                    length_text(scene, std::abs(above.clearance - bound)))));
}

void check(const Scene& scene, std::vector<Finding>& findings) {
    const wall::HangingStyle& style = scene.project.style;
    for (const Above& above : groups_above_furniture(scene)) {
        if (exceeds(style.clearance_least, above.clearance))
            report(scene, above, style.clearance_least, findings);
        else if (above.main && exceeds(above.clearance, style.clearance_most))
            report(scene, above, style.clearance_most, findings);
    }
}

}  // namespace

const Rule kClearanceAboveFurniture{
    "clearance-above-furniture",
    "a group above a sofa, bed, sideboard, table or bookcase hangs neither on top of it nor apart "
    "from it",
    "6 to 10 in (152 to 254 mm) from the highest point of the back; common practice, no source",
    check,
};

}  // namespace wallwright::rules
