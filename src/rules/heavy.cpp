#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

constexpr units::Kilograms kMost{20};

void check(const Scene& scene, std::vector<Finding>& findings) {
    for (const OnWall& one : scene.pieces) {
        const units::Kilograms mass = one.hanging->mass.high;
        if (mass <= kMost)
            continue;
        findings.push_back(finding(
            Severity::mind, {one.piece->id}, one.place, Measure{mass.value, kMost.value, "kg"},
            fmt::format(
                "{} weighs up to {}; over {}, let a professional choose the fixings and hang it.",
                title_of(one), mass_text(scene, mass), mass_text(scene, kMost))));
    }
}

}  // namespace

const Rule kHeavy{
    "heavy",
    "very heavy pieces are hung by a professional",
    "Earthquake Country Alliance, Secure your hanging objects: over 50 lb (22.7 kg) get "
    "professional help; rounded down to 20 kg, our choice",
    check,
};

}  // namespace wallwright::rules
