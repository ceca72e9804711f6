#include "mounts/design/mount_design.h"
#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

/// Of what lies in the frame, mm.
double depth_of(const Scene& scene, const OnWall& one) {
    if (const auto design = mounts::design_of(scene.project, *one.piece))
        return design->depth.total();
    const wall::Mount* mount = one.piece->mount ? find(scene.project, *one.piece->mount) : nullptr;
    double depth = one.frame->glazing.thickness + one.frame->backing.thickness +
                   (mount == nullptr ? 0 : thickness_of(*mount));
    for (const wall::Print* print : prints_in(scene.project, *one.piece))
        depth += mounts::paper_thickness(print->grams_per_square_metre);
    return depth;
}

/// A print that floats behind glazing asks for them.
std::string spacers_words(const Scene& scene, const OnWall& one) {
    const auto design = mounts::design_of(scene.project, *one.piece);
    return design && design->depth.spacer > 0 ? " with its spacers" : "";
}

void check(const Scene& scene, std::vector<Finding>& findings) {
    for (const OnWall& one : scene.pieces) {
        const double depth = depth_of(scene, one);
        const double rebate = one.frame->rebate_depth;
        if (!exceeds(depth, rebate))
            continue;
        findings.push_back(
            finding(Severity::mind, {one.piece->id}, one.place, Measure{depth, rebate},
                    fmt::format("The glazing, mount, print and backing of {}{} are {} deep, {} of "
                                "the rebate; choose thinner layers or a deeper frame.",
                                title_of(one), spacers_words(scene, one), length_text(scene, depth),
                                passed_text(scene, depth, rebate))));
    }
}

}  // namespace

const Rule kDepthFitsRebate{
    "depth-fits-rebate",
    "glazing, mount, print and backing together are no deeper than the rebate",
    "the layers of a frame add up to the depth of the rebate: Westfall Framing, printed Framing "
    "Guide",
    check,
};

}  // namespace wallwright::rules
