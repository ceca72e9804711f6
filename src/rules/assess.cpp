#include "rules/assess.h"

#include <algorithm>

namespace wallwright::rules {

namespace {

std::vector<wall::Finding> ask_all(const Scene& scene) {
    std::vector<wall::Finding> findings;
    for (const Rule& rule : all_rules()) {
        const std::size_t before = findings.size();
        rule.check(scene, findings);
        for (std::size_t i = before; i < findings.size(); ++i)
            findings[i].rule = rule.name;
    }
    std::ranges::stable_sort(findings, {}, &wall::Finding::severity);
    return findings;
}

Assessment assess_with(const wall::Project& project, const wall::Catalogue& catalogue) {
    const std::vector<wall::Placed> placed = placed_pieces(project);
    Assessment result;
    result.groups = spacing::find_groups(placed, spacing::group_reach(project.style.gap));
    result.hangings = hanging::hang_all(project, catalogue);
    result.zones = hanging::cable_zones(project.room);
    result.marks = hanging::marks_of(project, result.hangings);
    result.findings = ask_all({project, catalogue, result.groups, result.zones, result.marks.marks,
                               pieces_on_wall(project, result.hangings), result.marks.gaps});
    return result;
}

}  // namespace

Assessment assess(const wall::Project& project, const wall::Catalogue& catalogue) {
    const wall::Catalogue& own = project.own;
    if (own.materials.empty() && own.fixings.empty())
        return assess_with(project, catalogue);
    return assess_with(project, wall::with_own(catalogue, own));
}

}  // namespace wallwright::rules
