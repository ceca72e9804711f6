#include "hanging/in_wall.h"
#include "rules/all.h"
#include "rules/judge.h"
#include "rules/piercing.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace wallwright::rules {

namespace {

using WallRect = geometry::Rect<geometry::Wall>;

constexpr double kAbove = 500;  ///< mm over a radiator in which its pipes may come down.
constexpr double kAside = 100;  ///< mm beside it and beside a basin in which they may run.

/// Where the pipes of a fixture may run; nothing for what has none in this wall.
std::optional<WallRect> pipes_of(const wall::Room& room, const wall::Fixture& fixture) {
    if (!hanging::is_in_wall(room, fixture))
        return std::nullopt;
    const double floor = geometry::bounds(room.outline).bottom();
    const WallRect& place = fixture.place;
    if (fixture.type == wall::FixtureType::radiator)
        return WallRect{{place.left() - kAside, floor},
                        {place.right() + kAside, place.top() + kAbove}};
    if (fixture.type == wall::FixtureType::basin)
        return WallRect{{place.left() - kAside, floor}, {place.right() + kAside, place.top()}};
    return std::nullopt;
}

bool pierces_in(const OnWall& one, const WallRect& pipes) {
    return std::ranges::any_of(one.hanging->fixings, [&pipes](const hanging::Fixing& fixing) {
        return wall::pierces(fixing.kind) && touch(hanging::pierced_by(fixing), pipes);
    });
}

std::string_view where(const OnWall& one, const wall::Fixture& fixture) {
    if (fixture.type == wall::FixtureType::basin)
        return "below or beside";
    return one.place.top() > fixture.place.top() ? "above" : "beside or below";
}

void check(const Scene& scene, std::vector<wall::Finding>& findings) {
    for (const wall::Fixture& fixture : scene.project.room.fixtures) {
        const std::optional<WallRect> pipes = pipes_of(scene.project.room, fixture);
        if (!pipes)
            continue;
        std::vector<const OnWall*> found;
        for (const OnWall* one : those_that_pierce(scene))
            if (pierces_in(*one, *pipes))
                found.push_back(one);
        if (found.empty())
            continue;
        findings.push_back(finding(
            wall::Severity::mind, ids_of(found), bounds_of(found), std::nullopt,
            fmt::format("What holds {} goes into the wall {} {}, where water pipes may run; use a "
                        "detector that shows pipes, or hang elsewhere or by strips.",
                        titles_of(found), where(*found.front(), fixture), title_of(fixture))));
    }
}

}  // namespace

const Rule kPipes{
    "pipes",
    "nothing pierces the wall where the pipes of a radiator or a basin may run",
    "DIN 18015-3 names water, gas and heating lines among what installation zones are to spare; "
    "above radiators and below basins: common practice, no source; how far is our choice",
    check,
};

}  // namespace wallwright::rules
