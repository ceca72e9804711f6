#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

std::string gap_text(const Scene& scene, const spacing::Gap& gap) {
    return fmt::format("{} ({} to {})", length_text(scene, gap.size),
                       title_of(on_wall(scene, gap.first)), title_of(on_wall(scene, gap.second)));
}

std::vector<wall::PieceId> pieces_at(const spacing::Gap& a, const spacing::Gap& b) {
    std::vector<wall::PieceId> ids{a.first, a.second};
    for (const wall::PieceId& id : {b.first, b.second})
        if (std::ranges::find(ids, id) == ids.end())
            ids.push_back(id);
    return ids;
}

void check(const Scene& scene, std::vector<Finding>& findings) {
    const double tolerance = scene.project.style.gap_tolerance;
    for (const spacing::Group& group : scene.groups) {
        const double spread = group.gap_max() - group.gap_min();
        if (!exceeds(spread, tolerance))
            continue;
        const auto [least, most] = std::ranges::minmax_element(group.gaps, {}, &spacing::Gap::size);
        findings.push_back(finding(
            Severity::mind, pieces_at(*least, *most), group.bounds, Measure{spread, tolerance},
            fmt::format(
                "The gaps in {} run from {} to {}, a spread of {}, {} allowed; even them out.",
                title_of(scene, group), gap_text(scene, *least), gap_text(scene, *most),
                length_text(scene, spread), passed_text(scene, spread, tolerance))));
    }
}

}  // namespace

const Rule kGapsEven{
    "gaps-even",
    "the gaps between facing neighbours of a group are alike",
    "equal gaps inside a group; common practice, no source. The tolerance is about what a pencil "
    "and a tape leave",
    check,
};

}  // namespace wallwright::rules
