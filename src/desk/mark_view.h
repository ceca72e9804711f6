// The pencil mark under the pointer: which one it is, and what is drawn around it.
#pragma once

#include "desk/session.h"
#include "draw/drawing.h"

#include <vector>

namespace wallwright::desk {

/// The nearest mark no farther than `reach` mm from the point; null where there is none. For
/// immediate use.
const hanging::Mark* mark_at(const hanging::MarksTable& marks, geometry::Point<geometry::Wall> at,
                             double reach);

/// A ring that stands out, the circle in which the mark may come to lie, at scale, and the check
/// measures that begin or end at it. `scale` is mm on paper for a mm of wall.
std::vector<draw::Shape<geometry::Wall>> mark_overlay(const Session& session,
                                                      const hanging::Mark& mark, double scale);

}  // namespace wallwright::desk
