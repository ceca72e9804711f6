#include "desk/bench/mount_part.h"

#include <algorithm>
#include <cmath>

namespace wallwright::desk {

namespace {

using geometry::Point;
using geometry::Rect;
using mounts::Front;
using mounts::MountDesign;

/// An edge and how far it is from a point.
struct Near {
    MountPart part;
    double distance = 0;
};

/// Of one window's four edges the nearest within reach.
std::optional<Near> edge_at(const Rect<Front>& place, std::size_t window, Point<Front> at,
                            double reach) {
    constexpr double kOwnShare = 0.25;  // of a side, that an edge may take of the window
    const double across = std::min(reach, kOwnShare * place.width());
    const double down = std::min(reach, kOwnShare * place.height());
    const bool is_level = at.x >= place.min.x - reach && at.x <= place.max.x + reach;
    const bool is_plumb = at.y >= place.min.y - reach && at.y <= place.max.y + reach;
    std::optional<Near> best;
    const auto offer = [&](double where, double edge, double inward, int x, int y) {
        const double off = where - edge;
        const double limit = off * (x + y) < 0 ? inward : reach;
        if (std::abs(off) <= limit && (!best || std::abs(off) < best->distance))
            best = Near{{window, x, y}, std::abs(off)};
    };
    if (is_plumb) {
        offer(at.x, place.min.x, across, -1, 0);
        offer(at.x, place.max.x, across, 1, 0);
    }
    if (is_level) {
        offer(at.y, place.min.y, down, 0, -1);
        offer(at.y, place.max.y, down, 0, 1);
    }
    return best;
}

}  // namespace

Rect<Front> window_at(const MountDesign& design, std::size_t window) {
    return design.floats ? design.prints.at(window).place
                         : design.layers.front().windows.at(window).face;
}

std::size_t window_count(const MountDesign& design) {
    return design.prints.size();
}

std::optional<MountPart> part_at(const MountDesign& design, Point<Front> at, double reach) {
    std::optional<Near> edge;
    std::optional<MountPart> whole;
    for (std::size_t i = 0; i < window_count(design); ++i) {
        const Rect<Front> place = window_at(design, i);
        const auto near = design.floats ? std::nullopt : edge_at(place, i, at, reach);
        if (near && (!edge || near->distance <= edge->distance))
            edge = near;
        if (place.contains(at))
            whole = MountPart{i, 0, 0};
    }
    return edge ? edge->part : whole;
}

}  // namespace wallwright::desk
