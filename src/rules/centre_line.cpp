#include "rules/above_furniture.h"
#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"
#include "wall/middle.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

struct Band {
    double low = 0;
    double high = 0;
};

/// How far up (or down, negative) the group may go to be within the bounds of the clearance, where
/// it hangs above furniture.
std::optional<Band> moves_for_clearance(const std::vector<Above>& all, const spacing::Group& group,
                                        const wall::HangingStyle& style) {
    for (const Above& one : all)
        if (one.main && one.group == &group)
            return Band{style.clearance_least - one.clearance,
                        style.clearance_most - one.clearance};
    return std::nullopt;
}

/// No height would keep the clearance and the centre line both.
bool clearance_forbids(const std::optional<Band>& clearance, const Band& line) {
    return clearance && (exceeds(line.low, clearance->high) || exceeds(clearance->low, line.high));
}

void check_group(const Scene& scene, const spacing::Group& group, const std::vector<Above>& above,
                 std::vector<Finding>& findings) {
    const wall::HangingStyle& style = scene.project.style;
    const Band line{style.centre_height - style.centre_tolerance,
                    style.centre_height + style.centre_tolerance};
    const double centre = wall::middle_above_floor(scene.project, group.pieces);
    const bool high = exceeds(centre, line.high);
    if (!high && !exceeds(line.low, centre))
        return;
    const double bound = high ? line.high : line.low;
    const bool forbidden = clearance_forbids(moves_for_clearance(above, group, style),
                                             {line.low - centre, line.high - centre});
    const std::string advice = forbidden
                                   ? "no height keeps both that and the clearance above the "
                                     "furniture, so let the clearance lead"
                                   : fmt::format("{} it by {}", high ? "lower" : "raise",
                                                 length_text(scene, std::abs(centre - bound)));
    findings.push_back(finding(
        forbidden ? Severity::note : Severity::mind, group.pieces, group.bounds,
        Measure{centre, bound},
        fmt::format("The centre of {} is {} above the floor, {} the usual {}; {}.",
                    title_of(scene, group), length_text(scene, centre), high ? "over" : "under",
                    range_text(scene, line.low, line.high), advice)));
}

void check(const Scene& scene, std::vector<Finding>& findings) {
    const std::vector<Above> above = groups_above_furniture(scene);
    for (const spacing::Group& group : scene.groups)
        check_group(scene, group, above, findings);
}

}  // namespace

const Rule kCentreLine{
    "centre-line",
    "the centre of each group hangs on the centre line",
    "1450 to 1550 mm in homes, 57 to 60 in (1448 to 1524 mm) in galleries, the group hung as one "
    "piece; common practice, no source",
    check,
};

}  // namespace wallwright::rules
