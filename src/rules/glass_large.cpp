#include "rules/all.h"
#include "rules/glass.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

constexpr double kLong = 1000;
constexpr double kThick = 3;

void check(const Scene& scene, std::vector<Finding>& findings) {
    for (const OnWall& one : scene.pieces) {
        const wall::Frame& frame = *one.frame;
        const double longer = std::max(frame.outside.width, frame.outside.height);
        if (!exceeds(longer, kLong) || !exceeds(kThick, frame.glazing.thickness) ||
            !has_glass(scene, frame))
            continue;
        findings.push_back(finding(
            Severity::mind, {one.piece->id}, one.place, Measure{frame.glazing.thickness, kThick},
            fmt::format(
                "{} is {} long and has glass {} thick; over {}, fit glass of {} or acrylic.",
                title_of(one), length_text(scene, longer),
                length_text(scene, frame.glazing.thickness), length_text(scene, kLong),
                length_text(scene, kThick))));
    }
}

}  // namespace

const Rule kGlassLarge{
    "glass-large",
    "a frame over 1 m has glass of 3 mm, or acrylic",
    "2 mm, and 3 mm if the frame is wider than 1 m: a framer's page, Glazing; we take the longer "
    "side, as frames are turned",
    check,
};

}  // namespace wallwright::rules
