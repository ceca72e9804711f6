#include "rules/all.h"
#include "rules/glass.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

/// Over this the alliance asks for more than a nail or a hook.
constexpr units::Kilograms kMostOnAHook{20 * units::kKgPerPound};

void check(const Scene& scene, std::vector<Finding>& findings) {
    for (const wall::Furniture& furniture : scene.project.room.furniture) {
        if (furniture.type != wall::FurnitureType::sofa)
            continue;
        for (const OnWall& one : scene.pieces) {
            const units::Kilograms mass = one.hanging->mass.high;
            if (mass <= kMostOnAHook || !has_glass(scene, *one.frame) ||
                !is_over(one, furniture.place))
                continue;
            findings.push_back(finding(
                Severity::note, {one.piece->id}, one.place,
                Measure{mass.value, kMostOnAHook.value, "kg"},
                fmt::format("{} has glass and weighs up to {} where people sit below it on {}; "
                            "acrylic is lighter and safer.",
                            title_of(one), mass_text(scene, mass), title_of(furniture))));
        }
    }
}

}  // namespace

const Rule kOverSeat{
    "over-seat",
    "no heavy piece with glass hangs where people sit",
    "FEMA, How2015 (2008): keep framed pictures off walls above chairs and couches; from 20 lb on "
    "by Earthquake Country Alliance, Secure your hanging objects",
    check,
};

}  // namespace wallwright::rules
