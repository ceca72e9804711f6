#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

namespace wallwright::rules {

namespace {

using wall::Finding;
using wall::Severity;
using wall::Surface;

/// The sentence for the surface, with a place for the pieces; empty where strips hold.
std::string_view objection_to(Surface surface) {
    switch (surface) {
        case Surface::painted:
        case Surface::tile:
        case Surface::wood:
            return "";
        case Surface::fresh_paint:
            return "Strips pull fresh paint off the wall; wait at least 7 days from painting "
                   "before hanging {}.";
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

/// One finding for the whole wall, since one surface is the reason for all of them.
void check(const Scene& scene, std::vector<Finding>& findings) {
    const std::string_view objection = objection_to(scene.project.room.surface);
    const std::vector<const OnWall*> hung = those_on_strips(scene);
    if (objection.empty() || hung.empty())
        return;
    findings.push_back(finding(Severity::stop, ids_of(hung), bounds_of(hung), std::nullopt,
                               fmt::format(fmt::runtime(objection), titles_of(hung))));
}

}  // namespace

const Rule kSurfaceFit{
    "surface-fit",
    "strips are used only on surfaces that hold them",
    "not on fresh paint for 7 days, nor on wallpaper, textured plaster, brick or bare concrete: "
    "packets; common practice, "
    "no source",
    check,
};

}  // namespace wallwright::rules
