#include "rules/all.h"
#include "rules/judge.h"
#include "rules/way_clear.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;

using WallRect = geometry::Rect<geometry::Wall>;

const wall::Fixture* in_line(const wall::Room& room, const WallRect& pierced) {
    const auto lines_up = [&](const wall::Fixture& fixture) {
        const bool upright = geometry::overlap_x(pierced, fixture.place) >= 0;
        const bool level = geometry::overlap_y(pierced, fixture.place) >= 0;
        return hanging::shows_cables(room, fixture) && (upright || level);
    };
    const auto found = std::ranges::find_if(room.fixtures, lines_up);
    return found == room.fixtures.end() ? nullptr : &*found;
}

/// A fixing in a zone, and the socket or switch that it is in line with, if any.
struct Hit {
    const hanging::Fixing* fixing = nullptr;
    const hanging::Zone* zone = nullptr;
    const wall::Fixture* accessory = nullptr;
};

/// The worst of the piece's fixings: one in line with an accessory before any other.
std::optional<Hit> worst_hit(const Scene& scene, const OnWall& one) {
    std::optional<Hit> worst;
    for (const hanging::Fixing& fixing : one.hanging->fixings) {
        if (!wall::pierces(fixing.kind))
            continue;
        const WallRect pierced = hanging::pierced_by(fixing);
        const auto zone = std::ranges::find_if(scene.zones, [&pierced](const hanging::Zone& each) {
            return geometry::touch(each.place, pierced);
        });
        if (zone == scene.zones.end())
            continue;
        const Hit hit{&fixing, &*zone, in_line(scene.project.room, pierced)};
        if (!worst || (hit.accessory != nullptr && worst->accessory == nullptr))
            worst = hit;
    }
    return worst;
}

bool is_hung(const OnWall& one) {
    return one.piece->state == wall::PieceState::hung;
}

std::string where(const Hit& hit) {
    if (hit.accessory != nullptr)
        return fmt::format("in line with {}, where a cable should run", title_of(*hit.accessory));
    return fmt::format("where a cable may run, {}", hit.zone->why);
}

/// The shortest way for the piece until none of its fixings pierces a zone.
std::optional<Way> way_out_of_zones(const Scene& scene, const OnWall& one) {
    Carried carried{one.place, {}};
    for (const hanging::Fixing& fixing : one.hanging->fixings)
        if (wall::pierces(fixing.kind))
            for (const auto end :
                 {hanging::pierced_by(fixing).min, hanging::pierced_by(fixing).max})
                carried.points.push_back(end);
    std::vector<WallRect> places;
    for (const hanging::Zone& zone : scene.zones)
        places.push_back(zone.place);
    return way_out(scene.project.room.outline, carried, places);
}

std::string advice(const Scene& scene, const OnWall& one) {
    if (is_hung(one))
        return "use a detector before driving another there";
    const std::optional<Way> way = way_out_of_zones(scene, one);
    if (!way)
        return "hang it by strips or elsewhere";
    return fmt::format("move it {} {} and use a detector, as zones only say where cables should be",
                       length_text(scene, way->distance), way->direction);
}

Severity severity_of(const OnWall& one, const Hit& hit) {
    if (is_hung(one))
        return Severity::note;
    return hit.accessory != nullptr ? Severity::stop : Severity::mind;
}

void check(const Scene& scene, std::vector<Finding>& findings) {
    for (const OnWall& one : scene.pieces) {
        const std::optional<Hit> hit = worst_hit(scene, one);
        if (!hit)
            continue;
        findings.push_back(
            finding(severity_of(one, *hit), {one.piece->id}, hanging::covered_by(*hit->fixing),
                    std::nullopt,
                    fmt::format("A {} of {} {} {} ({}); {}.", word_for(hit->fixing->kind),
                                title_of(one), is_hung(one) ? "sits" : "goes", where(*hit),
                                hit->zone->source, advice(scene, one))));
    }
}

}  // namespace

const Rule kCableZones{
    "cable-zones",
    "nothing pierces the wall where cables should run",
    "BS 7671 522.6.202; DIN 18015-3:2016-09; in line with sockets and switches everywhere: common "
    "practice, no source",
    check,
};

}  // namespace wallwright::rules
