// The parts of the column beside the sheets of card.
#pragma once

#include "app/panels/panels.h"

namespace wallwright::app {

/// How the laying out goes, each card's sheets, notes.
void card_plan_part(Ui& ui, State& state);
/// What it costs, beside having the mounts cut.
void card_cost_part(Ui& ui, State& state);
/// The sheets at hand and those to buy, each with rows to edit once it is opened.
void card_stock_part(Ui& ui, State& state);

}  // namespace wallwright::app
