#include "hanging/offer.h"
#include "rules/all.h"
#include "rules/judge.h"
#include "rules/piercing.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace wallwright::rules {

namespace {

bool is_under_rail(const Scene& scene, const OnWall& one) {
    const std::optional<double>& rail = scene.project.room.rail;
    return rail && one.place.top() <= *rail;
}

/// Those that could hang from the rail but for what is on their backs.
std::vector<const OnWall*> without_rings(const Scene& scene,
                                         const std::vector<const OnWall*>& piercing) {
    std::vector<const OnWall*> found;
    std::ranges::copy_if(piercing, std::back_inserter(found), [&scene](const OnWall* one) {
        return is_under_rail(scene, *one) &&
               !hanging::goes_with(one->piece->hanger.type, wall::FixingKind::rail_hook);
    });
    return found;
}

void check(const Scene& scene, std::vector<wall::Finding>& findings) {
    if (!scene.project.room.no_holes)
        return;
    const std::vector<const OnWall*> found = those_that_pierce(scene);
    if (found.empty())
        return;
    const bool has_rail = std::ranges::any_of(
        found, [&scene](const OnWall* one) { return is_under_rail(scene, *one); });
    std::string text = fmt::format(
        "This wall is not to be pierced, and what holds {} goes into it; hang by {}, "
        "or ask whose wall it is.",
        titles_of(found), has_rail ? "strips or the picture rail" : "strips");
    if (const std::vector<const OnWall*> others = without_rings(scene, found); !others.empty())
        text += fmt::format(
            " The rail takes no sawtooth, no keyholes and no cord over two hooks: "
            "give {} two rings, each for a cord of its own.",
            titles_of(others));
    findings.push_back(finding(wall::Severity::stop, ids_of(found), bounds_of(found), std::nullopt,
                               std::move(text)));
}

}  // namespace

const Rule kNoHoles{
    "no-holes",
    "nothing pierces a wall that is not to be pierced",
    "the person says so of the wall; rented homes and listed buildings: ask the landlord or the "
    "local authority; common practice, no source",
    check,
};

}  // namespace wallwright::rules
