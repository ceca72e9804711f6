#include "desk/layout_part.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace wallwright::desk {

using geometry::Point;
using geometry::Rect;
using geometry::Screen;
using geometry::Wall;

namespace {

/// The middle of what is seen along one direction, of which so many mm are: as wanted, as far as
/// the wall allows.
double middle_of(double wanted, double wall_least, double wall_most, double seen) {
    if (wall_most - wall_least <= seen)
        return (wall_least + wall_most) / 2;
    return std::clamp(wanted, wall_least + seen / 2, wall_most - seen / 2);
}

}  // namespace

Rect<Wall> shown_part(const arrange::Task& task, std::span<const RankedLayout> layouts) {
    constexpr double kAir = 160;        // mm
    constexpr double kFurniture = 330;  // mm of its top
    std::optional<Rect<Wall>> part;
    const auto take = [&part](const Rect<Wall>& place) {
        part = part ? geometry::hull(*part, place) : place;
    };
    for (const RankedLayout& layout : layouts)
        for (const arrange::Spot& spot : layout.candidate.layout)
            take(spot.place);
    if (!part)
        return task.wall;
    if (task.beneath) {
        Rect<Wall> top = task.beneath->place;
        top.min.y = std::max(top.min.y, top.max.y - kFurniture);
        take(top);
    }
    const Rect<Wall> around = part->grown(kAir);
    return {{std::max(around.min.x, task.wall.min.x), std::max(around.min.y, task.wall.min.y)},
            {std::min(around.max.x, task.wall.max.x), std::min(around.max.y, task.wall.max.y)}};
}

geometry::Transform<Wall, Screen> small_view(const Rect<Wall>& part, const Rect<Wall>& wall,
                                             const Rect<Screen>& area, double gap) {
    double scale = std::min(area.width() / std::max(part.width(), 1.0),
                            area.height() / std::max(part.height(), 1.0));
    if (const double pixels = std::floor(scale * gap); pixels >= 1)
        scale = pixels / gap;
    const Point<Wall> from{
        middle_of(part.centre().x, wall.left(), wall.right(), area.width() / scale),
        middle_of(part.centre().y, wall.bottom(), wall.top(), area.height() / scale)};
    const Point<Screen> to = area.centre();
    return {{to.x - scale * from.x, to.y + scale * from.y}, scale};
}

}  // namespace wallwright::desk
