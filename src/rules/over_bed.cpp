#include "rules/all.h"
#include "rules/glass.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

bool is_bed(const wall::Furniture& furniture) {
    return furniture.type == wall::FurnitureType::bed || furniture.type == wall::FurnitureType::cot;
}

void check_pair(const Scene& scene, const OnWall& one, const wall::Furniture& bed,
                std::vector<Finding>& findings) {
    const units::Kilograms most{scene.project.style.bed_mass_most};
    const units::Kilograms mass = one.hanging->mass.high;
    const bool heavy = mass > most;
    const bool glazed = has_glass(scene, *one.frame);
    if (!heavy && !glazed)
        return;
    const std::string what = heavy ? fmt::format("weighs up to {}{}", mass_text(scene, mass),
                                                 glazed ? " and has glass" : "")
                                   : "has glass";
    const auto measure =
        heavy ? std::optional(Measure{mass.value, most.value, "kg"}) : std::nullopt;
    findings.push_back(finding(
        Severity::stop, {one.piece->id}, one.place, measure,
        fmt::format(
            "{} hangs over {} and {}; hang only what has no glass and weighs {} or less there.",
            title_of(one), title_of(bed), what, mass_text(scene, most))));
}

void check(const Scene& scene, std::vector<Finding>& findings) {
    for (const wall::Furniture& furniture : scene.project.room.furniture) {
        if (!is_bed(furniture))
            continue;
        for (const OnWall& one : scene.pieces)
            if (is_over(one, furniture.place))
                check_pair(scene, one, furniture, findings);
    }
}

}  // namespace

const Rule kOverBed{
    "over-bed",
    "nothing heavy and no glass hangs over a bed or a cot",
    "FEMA, Mount framed pictures and mirrors securely, How2015 (2008): keep framed pictures off "
    "walls above beds; the mass is our choice",
    check,
};

}  // namespace wallwright::rules
