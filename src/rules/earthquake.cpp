#include "hanging/capacity.h"
#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::rules {

namespace {

using wall::Severity;
using Pieces = std::vector<const OnWall*>;

constexpr units::Kilograms kLight{20 * units::kKgPerPound};
constexpr units::Kilograms kMost{50 * units::kKgPerPound};

bool is_closed(const Scene& scene, const hanging::Fixing& fixing) {
    const wall::FixingType* type = find(scene.catalogue, fixing.type);
    return type != nullptr && type->closed;
}

/// All its fixings are such that nothing jumps off them.
bool stays_on(const Scene& scene, const OnWall& one) {
    return std::ranges::all_of(one.hanging->fixings, [&scene](const hanging::Fixing& fixing) {
        return is_closed(scene, fixing);
    });
}

/// Masonry, concrete and wood hold a closed hook anywhere; all other walls in their studs.
bool holds_anywhere(wall::Core core) {
    return core != wall::Core::unknown && !wall::is_hollow(core);
}

bool is_firm(wall::Core core, const OnWall& one) {
    return holds_anywhere(core) ||
           std::ranges::all_of(one.hanging->fixings, &hanging::Fixing::on_stud);
}

/// Where its closed hooks go.
std::string_view place_words(wall::Core core) {
    if (!holds_anywhere(core))
        return "in studs";
    return core == wall::Core::wood ? "screwed into the wood" : "in plugs";
}

void say(Severity severity, const Pieces& pieces, std::string text,
         std::vector<wall::Finding>& findings) {
    if (!pieces.empty())
        findings.push_back(
            finding(severity, ids_of(pieces), bounds_of(pieces), std::nullopt, std::move(text)));
}

/// What is over kMost is for a professional, as the rule `heavy` says everywhere.
void check(const Scene& scene, std::vector<wall::Finding>& findings) {
    if (!scene.project.room.shakes)
        return;
    const wall::Core core = hanging::core_behind(scene.project.room);
    Pieces light;
    Pieces heavier;
    for (const OnWall& one : scene.pieces) {
        const units::Kilograms mass = one.hanging->mass.high;
        if (one.hanging->fixings.empty() || mass > kMost)
            continue;
        const bool is_light = mass <= kLight;
        if (stays_on(scene, one) && (is_light || is_firm(core, one)))
            continue;
        (is_light ? light : heavier).push_back(&one);
    }
    if (!heavier.empty())
        say(Severity::mind, heavier,
            fmt::format("Where the ground shakes, pieces over {} hang from closed hooks {}; "
                        "{} {} not.",
                        mass_text(scene, kLight), place_words(core), titles_of(heavier),
                        heavier.size() == 1 ? "does" : "do"),
            findings);
    if (!light.empty())
        say(Severity::mind, light,
            fmt::format("The ground shakes here, and {} can jump off; use closed hooks, or hold "
                        "all four corners with putty too.",
                        titles_of(light)),
            findings);
}

}  // namespace

const Rule kEarthquake{
    "earthquake",
    "where the ground shakes nothing can jump off its fixing, and what is heavy hangs in studs or "
    "in a solid wall",
    "Earthquake Country Alliance, Secure your hanging objects: up to 20 lb (9 kg) putty at all "
    "corners, up to 50 lb (23 kg) a closed hanger in a stud, or, our choice, "
    "in a solid wall; FEMA, Mount framed pictures and "
    "mirrors securely, How2015 (2008)",
    check,
};

}  // namespace wallwright::rules
