// The view of prints and frames as a picture.
#pragma once

#include "desk/bench/match_hand.h"
#include "draw/framed.h"

#include <vector>

namespace wallwright::desk {

using BoardShapes = std::vector<draw::Shape<geometry::Wall>>;

/// The drawers with what is in them, and the lines between. What is hovered, selected or carried
/// stands out, and what it belongs to with it. `scale` is mm on paper for a mm of the board.
BoardShapes match_board(const Session& session, const MatchScene& scene, const MatchHand& hand,
                        const draw::Pictures& pictures, double scale);

/// The print in the hand and what comes of letting it go, kept inside `sight`.
BoardShapes carried_print(const Session& session, const CarriedPrint& carried,
                          const draw::Pictures& pictures,
                          const geometry::Rect<geometry::Wall>& sight, double scale);

}  // namespace wallwright::desk
