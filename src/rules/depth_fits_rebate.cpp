#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

void check(const Scene& scene, std::vector<Finding>& findings) {
    for (const OnWall& one : scene.pieces) {
        const wall::Mount* mount =
            one.piece->mount ? find(scene.project, *one.piece->mount) : nullptr;
        const wall::Frame& frame = *one.frame;
        const double stack = frame.glazing.thickness + frame.backing.thickness +
                             (mount == nullptr ? 0 : thickness_of(*mount));
        if (!exceeds(stack, frame.rebate_depth))
            continue;
        findings.push_back(
            finding(Severity::mind, {one.piece->id}, one.place, Measure{stack, frame.rebate_depth},
                    fmt::format("The glazing, mount and backing of {} are {} deep, {} of the "
                                "rebate; choose thinner layers or a deeper frame.",
                                title_of(one), length_text(scene, stack),
                                passed_text(scene, stack, frame.rebate_depth))));
    }
}

}  // namespace

const Rule kDepthFitsRebate{
    "depth-fits-rebate",
    "glazing, mount and backing together are no deeper than the rebate",
    "the layers of a frame add up to the depth of the rebate: Westfall Framing, printed Framing "
    "Guide",
    check,
};

}  // namespace wallwright::rules
