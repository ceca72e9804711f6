#include "mounts/design/remarks.h"
#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

using mounts::Remark;
using mounts::Trouble;
using wall::Finding;
using wall::Severity;

/// What hangs is cut: only what cannot be so or harms the print is worth a word then.
bool matters(const Remark& remark, const wall::Piece& piece) {
    return piece.state != wall::PieceState::hung || remark.severity == Severity::stop ||
           remark.trouble == Trouble::touches_glazing;
}

/// depth-fits-rebate says it of every piece, and print-fits-frame of a single print.
bool is_said(const Remark& remark, const wall::Print& print, const mounts::MountDesign& design) {
    if (remark.trouble == Trouble::too_deep)
        return true;
    const bool alone = design.prints.size() == 1;
    const bool too_large = exceeds(print.size.width, design.blank.width) ||
                           exceeds(print.size.height, design.blank.height);
    return alone && too_large &&
           (remark.trouble == Trouble::print_leaves_blank ||
            remark.trouble == Trouble::frame_too_small);
}

Finding finding_of(const Remark& remark, const OnWall& one) {
    std::optional<Measure> measure;
    if (remark.measured && remark.wanted)
        measure = Measure{*remark.measured, *remark.wanted};
    return finding(remark.severity, {one.piece->id}, one.place, measure,
                   fmt::format("{}: {}", title_of(one), remark.text));
}

void check(const Scene& scene, std::vector<Finding>& findings) {
    for (const OnWall& one : scene.pieces) {
        const auto design = mounts::design_of(scene.project, *one.piece);
        if (!design)
            continue;
        const wall::Print& first = *prints_in(scene.project, *one.piece).front();
        const wall::Mount& mount = *find(scene.project, *one.piece->mount);
        for (const Remark& remark : mounts::remarks_on(*design, mount, scene.project.unit))
            if (matters(remark, *one.piece) && !is_said(remark, first, *design))
                findings.push_back(finding_of(remark, one));
    }
}

}  // namespace

const Rule kMountServes{
    "mount-serves",
    "a mount covers its prints, keeps its borders and can be cut",
    "the sources of the bounds are in mounts/design/remarks.h; the rest is plain geometry",
    check,
};

}  // namespace wallwright::rules
