// What lies over the wall's drawing on the screen: the selection, guides, live measures, the place
// of a finding.
#pragma once

#include "desk/hit.h"
#include "desk/session.h"
#include "desk/showing.h"
#include "desk/step.h"
#include "draw/drawing.h"

#include <vector>

namespace wallwright::desk {

/// In the order of painting. `scale` is mm on paper for a mm of wall, as in draw::ElevationOptions.
/// Selected pieces get corner brackets, in another ink when they are hung or pinned, and a piece
/// that is selected alone the word for that; selected furniture and fixtures brackets or, in the
/// room step, handles; the room step shows the outline's corners, the arrange step what is wished
/// (desk/overlay_wishes.h); a finding's place has a dashed frame.
std::vector<draw::Shape<geometry::Wall>> overlay(const Session& session,
                                                 const std::vector<Waiting>& waiting, Step step,
                                                 const Showing& showing, double scale);

}  // namespace wallwright::desk
