#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

using wall::Severity;

void check(const Scene& scene, std::vector<wall::Finding>& findings) {
    if (!scene.project.room.in_sun || scene.pieces.empty())
        return;
    const std::vector<const OnWall*> hung = those_on_strips(scene);
    if (!hung.empty())
        findings.push_back(
            finding(Severity::mind, ids_of(hung), bounds_of(hung), std::nullopt,
                    fmt::format("The sun warms this wall, and warm strips let go; hang {} by hooks "
                                "or screws.",
                                titles_of(hung))));
    std::vector<const OnWall*> all;
    for (const OnWall& one : scene.pieces)
        all.push_back(&one);
    findings.push_back(finding(
        Severity::note, ids_of(all), bounds_of(all), std::nullopt,
        fmt::format("{} {} in the sun, and prints, photographs and paint fade there; hang what you "
                    "can replace, or keep the sun off.",
                    titles_of(all), all.size() == 1 ? "hangs" : "hang")));
}

}  // namespace

const Rule kInSun{
    "in-sun",
    "no strips on a wall that the sun warms, and nothing there that must not fade",
    "not in the sun: S. Saitzyk, Art Hardware (1987), Picture hanging; strips not on what gets "
    "warm: packets, common practice, no source",
    check,
};

}  // namespace wallwright::rules
