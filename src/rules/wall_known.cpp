#include "hanging/capacity.h"
#include "rules/all.h"
#include "rules/judge.h"
#include "rules/piercing.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

/// What is made for some walls only says so itself, as fixing-suits-wall.
bool is_for_any_wall(const Scene& scene, const OnWall& one) {
    const wall::FixingType* type = find(scene.catalogue, one.hanging->fixings.front().type);
    return type == nullptr || type->cores.empty();
}

void check(const Scene& scene, std::vector<wall::Finding>& findings) {
    if (hanging::core_behind(scene.project.room) != wall::Core::unknown)
        return;
    std::vector<const OnWall*> found;
    for (const OnWall* one : those_that_pierce(scene))
        if (is_for_any_wall(scene, *one))
            found.push_back(one);
    if (found.empty())
        return;
    findings.push_back(finding(
        wall::Severity::note, ids_of(found), bounds_of(found), std::nullopt,
        fmt::format("What holds {} goes into a wall that nobody has named; find out whether it is "
                    "masonry, concrete, plasterboard or lath, since a hollow wall holds less.",
                    titles_of(found))));
}

}  // namespace

const Rule kWallKnown{
    "wall-known",
    "what the wall is made of is known before anything goes into it",
    "fixings are rated for a kind of wall, and plasterboard and lath hold less: trade articles on "
    "wall fixings; common practice, no source",
    check,
};

}  // namespace wallwright::rules
