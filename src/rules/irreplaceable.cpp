#include "rules/all.h"
#include "rules/heat.h"
#include "rules/judge.h"
#include "rules/wording.h"
#include "wall/this_side.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::rules {

namespace {

using wall::RoomUse;

bool over_a_radiator(const Scene& scene, const OnWall& one) {
    return std::ranges::any_of(wall::radiators_here(scene.project.room),
                               [&](const wall::Fixture* radiator) {
                                   return height_in_warm_air(scene, one, *radiator).has_value();
                               });
}

/// What harms the piece where it hangs, or where it will.
std::vector<std::string> harms(const Scene& scene, const OnWall& one) {
    const wall::Room& room = scene.project.room;
    std::vector<std::string> found;
    if (over_a_radiator(scene, one))
        found.emplace_back("over a radiator");
    if (room.in_sun)
        found.emplace_back("in the sun");
    if (room.use == RoomUse::bathroom || room.use == RoomUse::kitchen)
        found.push_back(fmt::format("in the steam of a {}", wall::name_of(room.use)));
    return found;
}

void check(const Scene& scene, std::vector<wall::Finding>& findings) {
    for (const OnWall& one : scene.pieces) {
        if (!one.piece->irreplaceable)
            continue;
        const std::vector<std::string> found = harms(scene, one);
        if (found.empty())
            continue;
        findings.push_back(
            finding(wall::Severity::mind, {one.piece->id}, one.place, std::nullopt,
                    fmt::format("{} cannot be replaced and hangs {}; hang it elsewhere.",
                                title_of(one), wall::listed(found))));
    }
}

}  // namespace

const Rule kIrreplaceable{
    "irreplaceable",
    "what cannot be replaced hangs neither in heat nor in the sun nor in steam",
    "Canadian Conservation Institute, CCI Notes 10/3: not near heat or ducts; not in the sun: S. "
    "Saitzyk, Art Hardware (1987), Picture hanging; not in steam: common practice, no source",
    check,
};

}  // namespace wallwright::rules
