// What every rule may look at: the wall, and what follows from it once worked out.
#pragma once

#include "hanging/marks.h"
#include "hanging/zones.h"
#include "spacing/group.h"
#include "wall/project.h"

#include <span>
#include <vector>

namespace wallwright::rules {

/// A piece with a place, and what the rules ask of it looked up once. Never null.
struct OnWall {
    const wall::Piece* piece = nullptr;
    const wall::Frame* frame = nullptr;
    const hanging::Hanging* hanging = nullptr;
    geometry::Rect<geometry::Wall> place;
};

/// A view for the time of one assessment: everything it points to outlives it.
struct Scene {
    const wall::Project& project;
    const wall::Catalogue& catalogue;
    std::span<const spacing::Group> groups;
    std::span<const hanging::Zone> zones;
    std::span<const hanging::Mark> marks;
    std::vector<OnWall> pieces;  ///< Every piece with a place, in the project's order.
    std::span<const hanging::GapForecast> gaps = {};
};

/// Every piece with a place beside how it hangs; `hangings` has one for each, in the project's
/// order.
std::vector<OnWall> pieces_on_wall(const wall::Project& project,
                                   std::span<const hanging::Hanging> hangings);

/// The pieces of a group, in the project's order.
std::vector<const OnWall*> members_of(const Scene& scene, const spacing::Group& group);

/// The piece of this id; it must be on the wall.
const OnWall& on_wall(const Scene& scene, const wall::PieceId& id);

/// True when the piece hangs by strips, or would if it could be hung at all.
bool on_strips(const OnWall& one);

/// Those pieces, in the project's order.
std::vector<const OnWall*> those_on_strips(const Scene& scene);

/// True when some of the piece is above the thing and no farther to the side than the thing
/// reaches.
bool is_over(const OnWall& one, const geometry::Rect<geometry::Wall>& thing);

}  // namespace wallwright::rules
