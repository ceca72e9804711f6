#include "rules/all.h"
#include "rules/heat.h"
#include "rules/judge.h"
#include "rules/wording.h"
#include "wall/this_side.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

void check_heat(const Scene& scene, const OnWall& one, const wall::Fixture& radiator,
                std::vector<Finding>& findings) {
    const std::optional<double> above = height_in_warm_air(scene, one, radiator);
    if (!above)
        return;
    const double reach = scene.project.style.heat_above;
    const bool strips = on_strips(one);
    findings.push_back(finding(
        strips ? Severity::stop : Severity::mind, {one.piece->id}, one.place,
        Measure{*above, reach},
        fmt::format("{} hangs {} above {}, whose warm air reaches {} up{}; raise it by {} or hang "
                    "it elsewhere.",
                    title_of(one), length_text(scene, *above), title_of(radiator),
                    length_text(scene, reach), strips ? ", and warm strips let go" : "",
                    length_text(scene, reach - *above))));
}

void check_steam(const Scene& scene, std::vector<Finding>& findings) {
    const wall::RoomUse use = scene.project.room.use;
    if (use != wall::RoomUse::bathroom && use != wall::RoomUse::kitchen)
        return;
    const std::vector<const OnWall*> hung = those_on_strips(scene);
    if (hung.empty())
        return;
    findings.push_back(
        finding(Severity::mind, ids_of(hung), bounds_of(hung), std::nullopt,
                fmt::format("Steam in a {} makes strips let go; hang {} by hooks or screws.",
                            wall::name_of(use), titles_of(hung))));
}

void check(const Scene& scene, std::vector<Finding>& findings) {
    for (const wall::Fixture* radiator : wall::radiators_here(scene.project.room))
        for (const OnWall& one : scene.pieces)
            check_heat(scene, one, *radiator, findings);
    check_steam(scene, findings);
}

}  // namespace

const Rule kHeatAndSteam{
    "heat-and-steam",
    "nothing hangs in the warm air above a radiator, and no strips where there is steam",
    "not over heaters: S. Saitzyk, Art Hardware (1987), Picture hanging; how far up is our choice. "
    "Strips neither over heat nor in steam: packets, common practice, no source",
    check,
};

}  // namespace wallwright::rules
