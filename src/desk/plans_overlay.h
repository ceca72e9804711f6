// What the plans put over the wall's drawing: where the group grows to, and frames to buy next.
#pragma once

#include "desk/session.h"
#include "desk/suggestions.h"
#include "draw/drawing.h"

#include <vector>

namespace wallwright::desk {

using WallShapes = std::vector<draw::Shape<geometry::Wall>>;

/// A dotted curve from the nearest piece toward the target, with its words: "grows toward Floor
/// lamp". A target that is no thing gets a ring, or a dotted box where it is a part of the wall.
/// Nothing without a target; no curve where a piece has reached it, and no words where there is no
/// room between what is `under` it, the wall's drawing. `scale` as in overlay().
WallShapes target_overlay(const Session& session, const WallShapes& under, double scale);

/// A dashed frame for each suggestion, numbered from 1 as in the list, the one pointed out with its
/// size and filled; the others with their size where they do not cover a better one. Labels of the
/// wall's drawing, which is `under` it, stand over the frames that would cross them, on their own
/// ground.
WallShapes suggestions_overlay(const Session& session, const Suggestions& suggestions,
                               const WallShapes& under, double scale);

}  // namespace wallwright::desk
