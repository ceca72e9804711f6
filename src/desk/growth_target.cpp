#include "desk/growth_target.h"

#include "arrange/grow.h"
#include "wall/this_side.h"

#include <algorithm>

namespace wallwright::desk {

using geometry::Rect;
using geometry::Wall;

std::vector<wall::Target> possible_targets(const wall::Project& project) {
    using wall::WallCorner;
    std::vector<wall::Target> targets;
    for (const wall::Furniture& furniture : project.room.furniture)
        targets.emplace_back(furniture.id);
    for (const wall::Fixture* fixture : wall::fixtures_here(project.room))
        targets.emplace_back(fixture->id);
    for (const WallCorner corner : {WallCorner::top_left, WallCorner::top_right,
                                    WallCorner::bottom_left, WallCorner::bottom_right})
        targets.emplace_back(corner);
    if (project.target && std::ranges::find(targets, *project.target) == targets.end())
        targets.push_back(*project.target);
    return targets;
}

std::optional<double> distance_to_target(const wall::Project& project) {
    const auto target = project.target ? arrange::place_of(project.room, *project.target)
                                       : std::optional<Rect<Wall>>();
    std::optional<double> least;
    if (target)
        for (const wall::Placed& placed : wall::placed_pieces(project)) {
            const double mm = distance_between(placed.place, *target);
            least = std::min(least.value_or(mm), mm);
        }
    return least;
}

}  // namespace wallwright::desk
