// The sheets of a card plan as a picture.
#pragma once

#include "desk/bench/card_hand.h"
#include "draw/drawing.h"

#include <vector>

namespace wallwright::desk {

using CardShapes = std::vector<draw::Shape<geometry::Wall>>;

/// The sheets with their blanks, cuts and measures, and the words over and under them. `scale` is
/// mm on paper for a mm of the board.
CardShapes card_board(const mounts::CardPlan& plan, const CardLayout& layout,
                      units::LengthUnit unit, double scale);

/// What stands out over that: what is hovered, chosen, kept or in the hand. `scene.unit` counts.
CardShapes card_overlay(const CardScene& scene, const CardHand& hand,
                        const geometry::Rect<geometry::Wall>& sight);

}  // namespace wallwright::desk
