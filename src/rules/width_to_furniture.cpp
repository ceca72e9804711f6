#include "rules/above_furniture.h"
#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

void check(const Scene& scene, std::vector<Finding>& findings) {
    const wall::HangingStyle& style = scene.project.style;
    for (const Above& above : groups_above_furniture(scene)) {
        const double whole = above.furniture->place.width();
        const double width = above.group->bounds.width();
        const double least = style.width_share_least * whole;
        const double most = style.width_share_most * whole;
        if (!above.main || (!exceeds(width, most) && !exceeds(least, width)))
            continue;
        const double bound = width > most ? style.width_share_most : style.width_share_least;
        findings.push_back(
            finding(Severity::mind, above.group->pieces, above.group->bounds,
                    Measure{width / whole, bound, ""},
                    fmt::format("Above {}, {} takes {}, {:.0f} % of its width; {:.0f} to {:.0f} % "
                                "is usual, here {}.",
                                title_of(*above.furniture), title_of(scene, *above.group),
                                length_text(scene, width), 100 * width / whole,
                                100 * style.width_share_least, 100 * style.width_share_most,
                                range_text(scene, least, most))));
    }
}

}  // namespace

const Rule kWidthToFurniture{
    "width-to-furniture",
    "a group has a fitting share of the width of the furniture below it",
    "0.60 to 0.75 of the furniture; common practice, no source",
    check,
};

}  // namespace wallwright::rules
