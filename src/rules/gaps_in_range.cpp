#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

/// One end of the range, and how to speak of what is past it.
struct End {
    double bound = 0;
    double outward = 1;         ///< +1 where more is too much, -1 where less is too little.
    std::string_view good_for;  ///< What the bound does.
    std::string_view remedy;
};

/// What to do about a gap, and how many others of its group are as bad.
std::string advice(const Scene& scene, const End& end, double by, std::ptrdiff_t others) {
    std::string text = fmt::format("{} by {}", end.remedy, length_text(scene, by));
    if (others > 0)
        text += fmt::format(" ({} more of its group {} the same)", others,
                            others == 1 ? "needs" : "need");
    return text;
}

/// Names the worst gap past one end, once for the group.
void check_end(const Scene& scene, const spacing::Group& group, const End& end,
               std::vector<Finding>& findings) {
    const auto past = [&end](const spacing::Gap& gap) {
        return end.outward * (gap.size - end.bound);
    };
    const std::ptrdiff_t count = std::ranges::count_if(
        group.gaps, [](double by) { return exceeds(by, 0); }, past);
    if (count == 0)
        return;
    const spacing::Gap& gap = *std::ranges::max_element(group.gaps, {}, past);
    findings.push_back(finding(
        Severity::mind, {gap.first, gap.second}, gap.place, Measure{gap.size, end.bound},
        fmt::format("{} and {} hang {} apart, {} that {}; {}.", title_of(on_wall(scene, gap.first)),
                    title_of(on_wall(scene, gap.second)), length_text(scene, gap.size),
                    passed_text(scene, gap.size, end.bound), end.good_for,
                    advice(scene, end, past(gap), count - 1))));
}

void check(const Scene& scene, std::vector<Finding>& findings) {
    const wall::HangingStyle& style = scene.project.style;
    const End least{style.gap_least, -1, "keeps frames from seeming to touch", "widen the gap"};
    const End most{style.gap_most, 1, "holds a group together", "close the gap"};
    for (const spacing::Group& group : scene.groups) {
        check_end(scene, group, least, findings);
        check_end(scene, group, most, findings);
    }
}

}  // namespace

const Rule kGapsInRange{
    "gaps-in-range",
    "no gap of a group is so narrow that frames seem to touch, or so wide that they fall apart",
    "1.5 in (38 mm) is the least named for grids and 3 in (75 mm) the most for a group at home; "
    "common practice, no source",
    check,
};

}  // namespace wallwright::rules
