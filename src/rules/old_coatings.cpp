#include "rules/all.h"
#include "rules/judge.h"
#include "rules/piercing.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

using wall::Surface;

constexpr int kNoAsbestosFrom = 2000;
constexpr int kNoLeadFrom = 1978;

bool is_painted(Surface surface) {
    switch (surface) {
        case Surface::painted:
        case Surface::fresh_paint:
        case Surface::textured:
        case Surface::wallpaper:
        case Surface::wood:
            return true;
        case Surface::brick:
        case Surface::concrete:
        case Surface::tile:
            return false;
    }
    return false;
}

bool may_hold_asbestos(const wall::Room& room) {
    return room.surface == Surface::textured && room.built.value_or(0) < kNoAsbestosFrom;
}

bool may_hold_lead(const wall::Room& room) {
    return is_painted(room.surface) && room.built && *room.built < kNoLeadFrom;
}

std::string asbestos_text(const wall::Room& room, const std::string& titles) {
    const std::string age = room.built ? fmt::format("from {}", *room.built)
                                       : std::string("of an age that nobody has said");
    return fmt::format(
        "A textured coating {} may hold asbestos, and what holds {} goes through it; have it "
        "sampled first, or hang by what leaves it whole.",
        age, titles);
}

std::string lead_text(const wall::Room& room, const std::string& titles) {
    return fmt::format(
        "Paint from {} may hold lead, and what holds {} goes through it; test it, keep the dust "
        "damp, wipe it up, and neither sand nor sweep it dry.",
        *room.built, titles);
}

void check(const Scene& scene, std::vector<wall::Finding>& findings) {
    const std::vector<const OnWall*> found = those_that_pierce(scene);
    if (found.empty())
        return;
    const wall::Room& room = scene.project.room;
    const auto say = [&](std::string text) {
        findings.push_back(finding(wall::Severity::mind, ids_of(found), bounds_of(found),
                                   std::nullopt, std::move(text)));
    };
    if (may_hold_asbestos(room))
        say(asbestos_text(room, titles_of(found)));
    if (may_hold_lead(room))
        say(lead_text(room, titles_of(found)));
}

}  // namespace

const Rule kOldCoatings{
    "old-coatings",
    "nothing is driven through a coating that may hold asbestos or lead without knowing",
    "HSE, Asbestos Essentials: textured coatings put on before 2000; US EPA, Renovation, Repair "
    "and "
    "Painting Rule, 40 CFR 745 subpart E: homes built before 1978",
    check,
};

}  // namespace wallwright::rules
