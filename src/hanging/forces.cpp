#include "hanging/forces.h"

#include "base/contract.h"
#include "hanging/formulas.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::hanging {

namespace {

using wall::FixingKind;

const char* word_for(FixingKind kind) {
    switch (kind) {
        case FixingKind::strip_pair:
            return "pair";
        case FixingKind::nail_hook:
            return "hook";
        case FixingKind::screw:
            return "screw";
        case FixingKind::rail_hook:
            return "cord";
    }
    return "fixing";
}

/// Where a fixing bears, from the lower left corner of the frame's back.
Spatial bearing_place(const Hung& hung, const Fixing& fixing) {
    return {fixing.at.x - hung.place.left(), fixing.at.y - fixing.cord - hung.place.bottom(), 0};
}

/// "at the top left", "at the bottom": where a strip is among all of them.
std::string strip_place(const Hung& hung, const Spatial& at) {
    double top = at.y;
    double bottom = at.y;
    for (const Fixing& other : hung.hanging.fixings) {
        const double y = bearing_place(hung, other).y;
        top = std::max(top, y);
        bottom = std::min(bottom, y);
    }
    const char* height = at.y == top ? "top" : at.y == bottom ? "bottom" : "middle";
    const double off = at.x - hung.place.width() / 2;
    const char* side = off < -geometry::kLengthEps  ? " left"
                       : off > geometry::kLengthEps ? " right"
                                                    : "";
    return fmt::format("pair at the {}{}", height, side);
}

std::string name_of(const Hung& hung, const Fixing& fixing) {
    const Spatial at = bearing_place(hung, fixing);
    if (fixing.kind == FixingKind::strip_pair)
        return strip_place(hung, at);
    const char* word = word_for(fixing.kind);
    if (hung.hanging.fixings.size() == 1)
        return word;
    return fmt::format("{} {}", at.x < hung.place.width() / 2 ? "left" : "right", word);
}

std::vector<Force> forces_on(const Hung& hung) {
    const double middle = hung.place.width() / 2;
    std::vector<Force> forces{{ForceKind::weight,
                               "weight",
                               {middle, hung.place.height() / 2, hung.depth / 2},
                               {0, 0 - weight_of(hung.hanging.mass.high).value, 0}}};
    double off_wall = 0;
    for (const Fixing& fixing : hung.hanging.fixings) {
        const Spatial at = bearing_place(hung, fixing);
        const std::string name = name_of(hung, fixing);
        forces.push_back(
            {ForceKind::carried, name, at, {0 - fixing.sideways.value, fixing.down.value, 0}});
        if (fixing.off_wall.value > 0)
            forces.push_back({ForceKind::held, name, at, {0, 0, -fixing.off_wall.value}});
        off_wall += fixing.off_wall.value;
    }
    forces.push_back(
        {ForceKind::wall_push, "wall at the lower edge", {middle, 0, 0}, {0, 0, off_wall}});
    return forces;
}

/// From the rings over the hooks that share a cord, and up from a bearing point to its rail hook.
std::vector<Strand> cord_of(const Hung& hung) {
    std::vector<Strand> strands;
    std::vector<Spatial> hooks;
    for (const Fixing& fixing : hung.hanging.fixings) {
        hooks.push_back(bearing_place(hung, fixing));
        Spatial rail = hooks.back();
        rail.y += fixing.cord;
        if (fixing.cord > 0)
            strands.push_back({hooks.back(), rail});
    }
    if (!hung.hanging.cord || !hung.hanger.ring_spacing)
        return strands;
    const auto by_x = [](const Spatial& a, const Spatial& b) { return a.x < b.x; };
    const auto [left, right] = std::minmax_element(hooks.begin(), hooks.end(), by_x);
    const double half = *hung.hanger.ring_spacing / 2;
    const double middle = hung.place.width() / 2;
    const double rings = left->y - hung.hanging.cord->drop;
    strands.push_back({{middle - half, rings, 0}, *left});
    if (hooks.size() > 1)
        strands.push_back({*left, *right});
    strands.push_back({{middle + half, rings, 0}, *right});
    return strands;
}

}  // namespace

FreeBody free_body(const wall::Project& project, const Hanging& hanging) {
    const wall::Piece* piece = wall::find(project, hanging.piece);
    WW_EXPECT(piece != nullptr && piece->at && !hanging.fixings.empty(),
              "forces are asked for a piece that hangs on something");
    const geometry::Rect<geometry::Wall> place = *place_of(project, *piece);
    const Hung hung{project, hanging, place, frame_of(project, *piece).depth,
                    complete(piece->hanger, place.size())};
    return {place.size(),      hung.depth,       forces_on(hung),
            formulas_of(hung), remarks_on(hung), cord_of(hung)};
}

}  // namespace wallwright::hanging
