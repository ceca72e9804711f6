// The card plan on paper: what to take and to buy, and each sheet with its cuts to tick off.
#pragma once

#include "draw/drawing.h"
#include "mounts/card/card_plan.h"
#include "pages/paper.h"
#include "wall/project.h"

#include <functional>
#include <optional>
#include <vector>

namespace wallwright::pages {

/// An overview with what it costs, then each sheet of card to a standard scale with its cuts in
/// words. None for a plan without lots and notes. Without the sheets' numbers.
std::vector<draw::PageDrawing> card_plan_sheets(const wall::Project& project,
                                                const mounts::CardPlan& plan, Paper paper);

/// The plan that the sheets show: by rounds alone, so that the same project gives the same bytes.
/// None where no mount is still to be cut.
std::optional<mounts::CardPlan> card_plan_for_sheets(const wall::Project& project,
                                                     const std::function<bool()>& go_on);

}  // namespace wallwright::pages
