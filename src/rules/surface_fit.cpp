#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;
using wall::Surface;

/// The sentence for the surface, with a place for the pieces; empty where strips hold, and for
/// fresh paint, on which they will.
std::string_view objection_to(Surface surface) {
    switch (surface) {
        case Surface::painted:
        case Surface::fresh_paint:
        case Surface::tile:
        case Surface::wood:
            return "";
        case Surface::wallpaper:
            return "Strips tear wallpaper off the wall; hang {} by hooks or screws.";
        case Surface::textured:
            return "Strips do not hold on a textured wall; hang {} by hooks or screws.";
        case Surface::brick:
            return "Strips do not hold on brick; hang {} by screws.";
        case Surface::concrete:
            return "Strips do not hold on bare concrete; hang {} by screws.";
    }
    return "";
}

int dry_days(const wall::Project& project) {
    return static_cast<int>(std::ceil(project.style.dry_days));
}

/// A wall that is called painted is dry unless both days are known and say that it is not.
bool may_be_fresh(const wall::Project& project) {
    const wall::Surface surface = project.room.surface;
    return surface == Surface::fresh_paint ||
           (surface == Surface::painted && project.room.painted_on && project.hangs_on);
}

/// What is to be done until fresh paint is dry; empty once it is.
std::string wait_for_paint(const wall::Project& project, const std::string& titles) {
    const int days = dry_days(project);
    const auto& painted = project.room.painted_on;
    if (days == 0)
        return "";
    if (!painted)
        return fmt::format(
            "Strips pull fresh paint off the wall; wait at least {} days from painting before "
            "hanging {}.",
            days, titles);
    const wall::Date dry = wall::later(*painted, days);
    if (project.hangs_on && std::chrono::sys_days(*project.hangs_on) >= std::chrono::sys_days(dry))
        return "";
    return fmt::format(
        "Strips pull fresh paint off the wall; it was painted on {} and dries {} days, so hang {} "
        "from {} on{}.",
        wall::spoken(*painted), days, titles, wall::spoken(dry),
        project.hangs_on ? fmt::format(", not on {}", wall::spoken(*project.hangs_on)) : "");
}

/// One finding for the whole wall, since one surface is the reason for all of them.
void check_strips(const Scene& scene, std::vector<Finding>& findings) {
    const std::vector<const OnWall*> hung = those_on_strips(scene);
    if (hung.empty())
        return;
    const Surface surface = scene.project.room.surface;
    const std::string_view objection = objection_to(surface);
    const std::string text =
        may_be_fresh(scene.project) ? wait_for_paint(scene.project, titles_of(hung))
        : objection.empty()         ? std::string()
                                    : fmt::format(fmt::runtime(objection), titles_of(hung));
    if (!text.empty())
        findings.push_back(
            finding(Severity::stop, ids_of(hung), bounds_of(hung), std::nullopt, text));
}

/// What a plain nail does to the wall; empty where it goes in.
std::string_view nail_in(const wall::Room& room) {
    if (room.surface == Surface::tile)
        return "A nail cracks a tile";
    if (room.surface == Surface::brick)
        return "A picture hook's nail bends on brick";
    if (wall::core_of(room) == wall::Core::concrete)
        return "A picture hook's nail bends on concrete";
    return "";
}

bool is_made_for(const Scene& scene, const hanging::Fixing& fixing) {
    const wall::FixingType* type = find(scene.catalogue, fixing.type);
    return type != nullptr &&
           std::ranges::find(type->cores, wall::core_of(scene.project.room)) != type->cores.end();
}

/// Hooks whose packets name the wall are the exception, but for tiles.
void check_nails(const Scene& scene, std::vector<Finding>& findings) {
    const std::string_view trouble = nail_in(scene.project.room);
    if (trouble.empty())
        return;
    const bool tiled = scene.project.room.surface == Surface::tile;
    const auto is_wrong = [&](const hanging::Fixing& fixing) {
        return fixing.kind == wall::FixingKind::nail_hook && (tiled || !is_made_for(scene, fixing));
    };
    std::vector<const OnWall*> nailed;
    for (const OnWall& one : scene.pieces)
        if (one.piece->state == wall::PieceState::planned &&
            std::ranges::any_of(one.hanging->fixings, is_wrong))
            nailed.push_back(&one);
    if (nailed.empty())
        return;
    findings.push_back(
        finding(Severity::mind, ids_of(nailed), bounds_of(nailed), std::nullopt,
                fmt::format("{}; hang {} by screws in plugs{}.", trouble, titles_of(nailed),
                            tiled ? ", drilled where tiles join" : "")));
}

}  // namespace

const Rule kSurfaceFit{
    "surface-fit",
    "strips are used only on surfaces that hold them, and nails only where they go in",
    "strips not on fresh paint for 7 days, nor on wallpaper, textured plaster, brick or bare "
    "concrete: packets; nails not in tile, brick or concrete: common practice, no source",
    [](const Scene& scene, std::vector<Finding>& findings) {
        check_strips(scene, findings);
        check_nails(scene, findings);
    },
};

}  // namespace wallwright::rules
