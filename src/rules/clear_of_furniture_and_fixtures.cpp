#include "rules/all.h"
#include "rules/judge.h"
#include "rules/way_clear.h"
#include "rules/wording.h"
#include "wall/this_side.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

/// A lamp or a plant is easily moved, and a picture half behind it can be meant.
Severity severity_of(const wall::Furniture& furniture) {
    const bool light =
        furniture.type == wall::FurnitureType::lamp || furniture.type == wall::FurnitureType::plant;
    return light ? Severity::mind : Severity::stop;
}

struct Thing {
    geometry::Rect<geometry::Wall> place;
    Severity severity = Severity::stop;
    std::string title;
    std::string_view verb;  ///< What a piece does to it.
};

std::vector<Thing> things_of(const wall::Room& room) {
    std::vector<Thing> things;
    for (const wall::Furniture& furniture : room.furniture)
        things.push_back(
            {furniture.place, severity_of(furniture), title_of(furniture), "is behind"});
    for (const wall::Fixture* fixture : wall::fixtures_here(room))
        things.push_back({fixture->place, Severity::stop, title_of(*fixture), "covers"});
    return things;
}

void check_pair(const Scene& scene, const OnWall& one, const Thing& thing,
                std::vector<Finding>& findings) {
    const double depth = overlap_depth(one.place, thing.place);
    if (depth <= 0)
        return;
    const Way way = way_clear(scene.project.room.outline, one.place, thing.place, 0);
    findings.push_back(
        finding(thing.severity, {one.piece->id}, one.place, Measure{depth, 0},
                fmt::format("{} {} {} by {}; move it {} {} to clear it.", title_of(one), thing.verb,
                            thing.title, length_text(scene, depth),
                            length_text(scene, way.distance), way.direction)));
}

void check(const Scene& scene, std::vector<Finding>& findings) {
    const std::vector<Thing> things = things_of(scene.project.room);
    for (const OnWall& one : scene.pieces)
        for (const Thing& thing : things)
            check_pair(scene, one, thing, findings);
}

}  // namespace

const Rule kClearOfFurnitureAndFixtures{
    "clear-of-furniture-and-fixtures",
    "no piece is hidden by furniture or covers a door, a window, a radiator, a socket or a switch",
    "common practice, no source",
    check,
};

}  // namespace wallwright::rules
