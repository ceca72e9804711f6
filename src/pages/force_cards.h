// The forces on some pieces of the wall, drawn, with the formulas.
#pragma once

#include "pages/flow.h"
#include "rules/assess.h"

namespace wallwright::pages {

/// Of each kind of hanger with each kind of fixing the piece whose fixings are in use the most,
/// three in a row. Nothing where no piece has fixings.
void add_force_cards(Flow& flow, const wall::Project& project, const rules::Assessment& assessment);

}  // namespace wallwright::pages
